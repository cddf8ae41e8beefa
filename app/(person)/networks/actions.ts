'use server';

import { redirect } from 'next/navigation';
import { requirePerson } from '@/lib/access/current';
import { openNetwork } from '@/lib/access/open-network';

export async function openNetworkAction(data: FormData): Promise<void> {
  const result = await openNetwork(await requirePerson(), data.get('networkId'));
  redirect(result.kind === 'ok' ? '/' : '/networks');
}
