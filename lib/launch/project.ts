import path from 'node:path';

/** The folder of this project. */
export const root = path.resolve(import.meta.dirname, '../..');

/** A path inside the project. */
export const inProject = (...parts: string[]) => path.join(root, ...parts);

/** Where a command keeps its database, secret and logs; git ignores it. */
export const dataFolder = (purpose: 'demo' | 'live' | 'test') => inProject('.pinset', purpose);
