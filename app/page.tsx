import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { requireActor } from '@/lib/access/current';

const firstPage = { coordinator: '/comparison', member: '/today', funder: '/reports' } as const;

/** Nobody stays here: each role has a first page of its own. */
export default async function FirstPage() {
  const actor = await requireActor();
  redirect(firstPage[actor.role] as Route);
}
