/**
 * sfc32, the 32-bit "small fast counter" generator of Doty-Humphrey's PractRand (public domain, from memory):
 * three mixing words and a counter, period at least 2^32, mean period about 2^127.
 *
 * @param seed a safe integer; its low and high 32 bits fill two of the state words.
 * @returns a function giving the next unsigned 32-bit word.
 */
export function sfc32(seed: number): () => number {
  let a = 0;
  let b = (seed % 4_294_967_296) | 0;
  let c = Math.floor(seed / 4_294_967_296) | 0;
  let counter = 1;
  const word = () => {
    const sum = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + sum;
    c |= 0;
    return sum >>> 0;
  };
  // The first words still show the seed; PractRand throws away 12, a few more cost nothing.
  for (let round = 0; round < 20; round += 1) word();
  return word;
}
