import 'server-only';
import sharp from 'sharp';
import { invalid, ok, type Result } from '@/lib/base/result';
import { mostPhotoMegabytes } from './photo.input';

/** A picture made anew from its pixels: nothing of what the camera wrote beside them is left. */
export type PreparedPhoto = {
  readonly image: Uint8Array<ArrayBuffer>;
  readonly thumbnail: Uint8Array<ArrayBuffer>;
  readonly widthPx: number;
  readonly heightPx: number;
};

const longestSide = 1600;
const thumbnailSide = 320;
/** Twice the pixels of the largest phone cameras; a small file may unfold to more than a server can hold. */
const mostPixels = 120_000_000;
const readable = ['jpeg', 'png', 'webp', 'heif', 'gif', 'tiff'];

const bytes = (buffer: Buffer): Uint8Array<ArrayBuffer> => new Uint8Array(buffer);

/**
 * Reads a picture by its content, whatever it is called; turns it upright; writes it again as JPEG of at most 1600 px
 * with a small one beside it. Place, time, camera and every other note in the file are left behind.
 */
export async function preparePhoto(file: Uint8Array): Promise<Result<PreparedPhoto>> {
  if (file.byteLength === 0) return invalid('file', 'missing-file');
  if (file.byteLength > mostPhotoMegabytes * 1024 * 1024)
    return invalid('file', 'file-too-large', { max: mostPhotoMegabytes });
  try {
    const source = sharp(file, { limitInputPixels: mostPixels, failOn: 'error' });
    const { format } = await source.metadata();
    if (format === undefined || !readable.includes(format)) return invalid('file', 'not-a-picture');
    const upright = source.rotate().flatten({ background: '#ffffff' });
    const within = (side: number) =>
      ({ width: side, height: side, fit: 'inside', withoutEnlargement: true }) as const;
    const image = await upright
      .clone()
      .resize(within(longestSide))
      .jpeg({ quality: 80, mozjpeg: true })
      .toBuffer({ resolveWithObject: true });
    const thumbnail = await upright.clone().resize(within(thumbnailSide)).jpeg({ quality: 70 }).toBuffer();
    return ok({
      image: bytes(image.data),
      thumbnail: bytes(thumbnail),
      widthPx: image.info.width,
      heightPx: image.info.height,
    });
  } catch {
    // The library's own sentences speak of files it cannot read; to a person that is one thing.
    return invalid('file', 'not-a-picture');
  }
}
