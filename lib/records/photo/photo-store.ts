import 'server-only';
import { AwsClient } from 'aws4fetch';

/** A store outside the database that speaks the S3 protocol. */
export type OutsideStore = {
  put(name: string, content: Uint8Array<ArrayBuffer>): Promise<void>;
  get(name: string): Promise<Uint8Array<ArrayBuffer> | undefined>;
};

/**
 * Where pictures are kept, by PHOTO_STORE: unset or `database` keeps them with the records; otherwise
 * `s3://KEY:SECRET@HOST/BUCKET?region=REGION` (add `&plain=yes` for a store of one's own without TLS).
 *
 * @throws Error with one plain line when the setting cannot be read
 */
export function outsideStore(
  setting: string | undefined = process.env.PHOTO_STORE,
): OutsideStore | undefined {
  if (setting === undefined || setting === '' || setting === 'database') return undefined;
  const wrong = 'PHOTO_STORE is neither "database" nor an address s3://KEY:SECRET@HOST/BUCKET?region=REGION.';
  if (!URL.canParse(setting)) throw new Error(wrong);
  const { protocol, username, password, host, pathname, searchParams } = new URL(setting);
  const bucket = pathname.replace(/^\/|\/$/g, '');
  if (protocol !== 's3:' || !username || !password || !host || !/^[a-z0-9.-]{3,63}$/.test(bucket))
    throw new Error(wrong);
  const client = new AwsClient({
    accessKeyId: decodeURIComponent(username),
    secretAccessKey: decodeURIComponent(password),
    service: 's3',
    region: searchParams.get('region') ?? 'us-east-1',
    retries: 2,
  });
  const scheme = searchParams.get('plain') === 'yes' ? 'http' : 'https';
  const address = (name: string) => `${scheme}://${host}/${bucket}/${name}`;
  const ask = (name: string, init: RequestInit) =>
    client.fetch(address(name), { ...init, signal: AbortSignal.timeout(15_000) });
  return {
    async put(name, content) {
      const answer = await ask(name, {
        method: 'PUT',
        body: content,
        headers: { 'content-type': 'image/jpeg' },
      });
      if (!answer.ok) throw new Error(`the store for pictures answered ${answer.status} to ${name}`);
    },
    async get(name) {
      const answer = await ask(name, { method: 'GET' });
      if (answer.status === 404) return undefined;
      if (!answer.ok) throw new Error(`the store for pictures answered ${answer.status} to ${name}`);
      return new Uint8Array(await answer.arrayBuffer());
    },
  };
}

/** Name of a picture in a store outside: nothing in it tells whose it is. */
export function storedName(networkId: string, photoId: string, size: 'full' | 'small'): string {
  return `${networkId}/${photoId}-${size}.jpg`;
}
