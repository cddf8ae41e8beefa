import { createServer } from 'node:net';
import { errorCode } from '../error-code';

const isFreeOn = (host: string, port: number) =>
  new Promise<boolean>((resolve, reject) => {
    const probe = createServer();
    probe.once('error', (problem) => {
      const code = errorCode(problem);
      if (code === 'EADDRNOTAVAIL' || code === 'EAFNOSUPPORT') resolve(true);
      else if (code === 'EADDRINUSE' || code === 'EACCES') resolve(false);
      else reject(problem);
    });
    probe.listen({ port, host, exclusive: true }, () => probe.close(() => resolve(true)));
  });

/**
 * Whether nobody listens on `port` of this machine. Both loopback addresses count, because a browser may take
 * "localhost" for either.
 */
export const isFree = async (port: number) =>
  (await isFreeOn('127.0.0.1', port)) && (await isFreeOn('::1', port));

/** The first free port from `first` on, at most `tries` further. */
export async function freePort(first: number, tries = 200): Promise<number> {
  for (let port = first; port < first + tries; port += 1) if (await isFree(port)) return port;
  throw new Error(`no free port between ${first} and ${first + tries - 1}`);
}
