/** Each file being made holds a connection; two leave enough for everybody's pages. */
const most = 2;
let running = 0;

/** Runs a long reading, or answers `busy` while two others run in this process. */
export async function fewAtATime<T>(make: () => Promise<T>): Promise<T | 'busy'> {
  if (running >= most) return 'busy';
  running += 1;
  try {
    return await make();
  } finally {
    running -= 1;
  }
}
