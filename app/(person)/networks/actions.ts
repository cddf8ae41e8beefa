'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { requirePerson } from '@/lib/access/current';
import { nextPath, onTheWay } from '@/lib/access/next-path';
import { openNetwork } from '@/lib/access/open-network';

export async function openNetworkAction(data: FormData): Promise<void> {
  const result = await openNetwork(await requirePerson(), data.get('networkId'));
  const next = data.get('next');
  redirect((result.kind === 'ok' ? (nextPath(next) ?? '/') : onTheWay('/networks', next)) as Route);
}
