import type { NoticedKind } from './lot-notice.input';

export type LotRef = { readonly lotKind: NoticedKind; readonly lotId: string };

/** Which lot a notice is about; the database holds that it is exactly one. */
export function lotOf(notice: {
  readonly spawnLotId: string | null;
  readonly substrateLotId: string | null;
}): LotRef {
  return notice.spawnLotId === null
    ? { lotKind: 'substrate-lot', lotId: notice.substrateLotId ?? '' }
    : { lotKind: 'spawn-lot', lotId: notice.spawnLotId };
}
