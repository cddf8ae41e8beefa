const longestSide = 1600;
const aimBytes = 300 * 1024;
const qualities = [0.8, 0.65, 0.5];

function encoded(canvas: HTMLCanvasElement, quality: number): Promise<Blob | null> {
  return new Promise((resolve) => canvas.toBlob(resolve, 'image/jpeg', quality));
}

/**
 * A picture made small on the phone, before it is kept or sent: at most 1600 px, upright, about 300 kB. Drawn anew, so
 * nothing that the camera wrote beside it is left. What the browser cannot draw is answered as it came; the server
 * checks every picture again.
 */
export async function shrinkPhoto(file: Blob): Promise<Blob> {
  let picture: ImageBitmap;
  try {
    picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    return file;
  }
  const scale = Math.min(1, longestSide / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  let smallest: Blob | null = null;
  for (const quality of qualities) {
    smallest = (await encoded(canvas, quality)) ?? smallest;
    if (smallest && smallest.size <= aimBytes) break;
  }
  return smallest ?? file;
}
