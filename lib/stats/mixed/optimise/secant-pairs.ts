import { bilinear, dotProduct } from '../linear-algebra/small-matrix';

/** A step taken and the change of gradient it made. */
export type SecantPair = { readonly change: Float64Array; readonly response: Float64Array };

/** BFGS updates of a curvature matrix by the pairs, oldest first; pairs without positive curvature are passed over. */
export function withSecantPairs(
  curvature: Float64Array,
  pairs: readonly SecantPair[],
  size: number,
): Float64Array {
  const matrix = Float64Array.from(curvature);
  for (const { change, response } of pairs) {
    const along = dotProduct(change, response);
    const model = bilinear(matrix, change, change);
    if (!(along > 1e-12 * Math.sqrt(dotProduct(change, change) * dotProduct(response, response)))) continue;
    if (!(model > 0)) continue;
    const image = new Float64Array(size);
    for (let i = 0; i < size; i++) {
      for (let j = 0; j < size; j++) {
        image[i] = (image[i] as number) + (matrix[i * size + j] as number) * (change[j] as number);
      }
    }
    for (let i = 0; i < size; i++) {
      for (let j = 0; j < size; j++) {
        const drop = ((image[i] as number) * (image[j] as number)) / model;
        const gain = ((response[i] as number) * (response[j] as number)) / along;
        matrix[i * size + j] = (matrix[i * size + j] as number) - drop + gain;
      }
    }
  }
  return matrix;
}
