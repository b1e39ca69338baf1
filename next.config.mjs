/** Next.js settings. Headers, sockets and the start of the process live in server/. */
export default {
  distDir: process.env.VEILSTEP_BUILD ?? '.next',
  serverExternalPackages: ['@electric-sql/pglite', 'sharp', 'ws', 'pg', '@fastify/busboy'],
  poweredByHeader: false,
  devIndicators: false,
};
