/**
 * `npm start` ends up here: sets the mode, teaches Node.js to read TypeScript, and runs server/main.ts in this
 * same process, so that a signal reaches the server itself.
 *
 * A shell between npm and this process may die of the signal that npm passes on without handing it further;
 * then this process has another parent all of a sudden, and stops. No shell's `exec` is needed, so the same
 * script serves Windows.
 */
import { register } from 'tsx/esm/api';

const PARENT_LOOK_MS = 500;

process.env.NODE_ENV ??= process.argv.includes('--dev') ? 'development' : 'production';

function parentLives(parent) {
  if (process.platform !== 'win32') return process.ppid === parent;
  try {
    process.kill(parent, 0);
    return true;
  } catch {
    return false;
  }
}

if (process.env.npm_lifecycle_event) {
  const parent = process.ppid;
  const looking = setInterval(() => {
    if (parentLives(parent)) return;
    clearInterval(looking);
    process.emit('SIGTERM');
  }, PARENT_LOOK_MS);
  looking.unref();
}

register();
await import('./main.ts');
