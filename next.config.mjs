/** Next.js settings. Headers, sockets and the start of the process live in server/. */
export default {
  distDir: process.env.VEILSTEP_BUILD ?? '.next',
  serverExternalPackages: [
    'yjs',
    'y-protocols',
    'lib0',
    '@electric-sql/pglite',
    'sharp',
    'ws',
    'pg',
    '@fastify/busboy',
  ],
  // `npm run check` checks the types, of the tests too; whoever only starts the server need not wait for that.
  typescript: { ignoreBuildErrors: true },
  // lib0 names Node's Buffer in a branch that no browser takes; without this its whole stand-in is sent along.
  turbopack: { resolveAlias: { buffer: { browser: './app/_live/no-buffer.ts' } } },
  poweredByHeader: false,
  devIndicators: false,
};
