// Starts fit-worker.ts in a thread that has no loader for TypeScript of its own.
import { register } from 'tsx/esm/api';

register();
await import('./fit-worker.ts');
