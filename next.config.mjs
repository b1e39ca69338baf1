/** Next.js settings. Headers, sockets and the start of the process live in server/. */
const german = process.env.VEILSTEP_LANGUAGE === 'de';

export default {
  distDir: process.env.VEILSTEP_BUILD ?? (german ? '.next-de' : '.next'),
  // What `server/core/say/language.ts` reads; in a browser there is no environment to read it from.
  env: { VEILSTEP_LANGUAGE: german ? 'de' : 'en' },
  serverExternalPackages: [
    'yjs',
    'y-protocols',
    'lib0',
    '@electric-sql/pglite',
    'sharp',
    'ws',
    'pg',
    '@fastify/busboy',
    'yazl',
    'yauzl',
  ],
  // `npm run check` checks the types, of the tests too; whoever only starts the server need not wait for that.
  typescript: { ignoreBuildErrors: true },
  turbopack: {
    resolveAlias: {
      // One language is built in, so that no browser is sent the words of another.
      ...(german
        ? { '#words/*': './app/_words/de/*' }
        : { '#sentences': './server/core/say/no-sentences.ts' }),
      // lib0 names Node's Buffer in a branch that no browser takes; without this Next's whole stand-in is sent along.
      'next/dist/compiled/buffer': { browser: './app/_live/no-buffer.ts' },
      // Yjs warns through a printer of coloured text that brings shapes and a page's elements with it.
      'lib0/logging': { browser: './app/_live/plain-logging.ts' },
    },
  },
  poweredByHeader: false,
  devIndicators: false,
};
