// Node.js 20 cannot start a worker on a .ts file: this registers tsx and hands over.
import { register } from 'tsx/esm/api';

register();
await import('./sheet-worker.ts');
