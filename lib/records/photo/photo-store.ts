import 'server-only';
import { AwsClient } from 'aws4fetch';
import { photoStoreSetting, wrongPhotoStore } from '@/lib/base/photo-store-setting';

/** A store of pictures outside the database. */
export type OutsideStore = {
  put(name: string, content: Uint8Array<ArrayBuffer>): Promise<void>;
  get(name: string): Promise<Uint8Array<ArrayBuffer> | undefined>;
};

const patienceMilliseconds = 15_000;

/**
 * The store that PHOTO_STORE names; undefined when pictures are kept with the records.
 *
 * @throws Error with one plain line when the setting cannot be read
 */
export function outsideStore(
  setting: string | undefined = process.env.PHOTO_STORE,
): OutsideStore | undefined {
  const found = photoStoreSetting(setting);
  if (found === undefined) return undefined;
  if (found === 'wrong') throw new Error(wrongPhotoStore);
  const { bucketAddress, ...keys } = found;
  const client = new AwsClient({ ...keys, service: 's3', retries: 2 });
  const ask = (name: string, init: RequestInit) =>
    client.fetch(`${bucketAddress}/${name}`, { ...init, signal: AbortSignal.timeout(patienceMilliseconds) });
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
