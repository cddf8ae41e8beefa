import { readFileSync } from 'node:fs';
import { workerSource } from '@/lib/offline/worker-source';

export const dynamic = 'force-dynamic';

/** The id of the running build; the development server has none and keeps no pages. */
function buildId(): string {
  try {
    return readFileSync('.next/BUILD_ID', 'utf8').trim();
  } catch {
    return 'development';
  }
}

/** The worker that keeps the page for no signal on a phone. */
export function GET(): Response {
  return new Response(workerSource(buildId()), {
    headers: {
      'content-type': 'text/javascript; charset=utf-8',
      'cache-control': 'no-cache',
      'service-worker-allowed': '/',
    },
  });
}
