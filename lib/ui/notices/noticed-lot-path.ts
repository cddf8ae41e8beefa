import type { Route } from 'next';
import type { LotRef } from '@/lib/records/lot-notice/lot-of';

/** The page of the lot that a notice is about. */
export const noticedLotPath = ({ lotKind, lotId }: LotRef): Route => `/${lotKind}s/${lotId}` as Route;
