import { requireActor } from '@/lib/access/current';
import { AllNext } from './all-next';
import { SiteNext } from './site-next';

export default async function NextPage({ searchParams }: PageProps<'/questions/next'>) {
  const actor = await requireActor('coordinator', 'member');
  const { site, mix } = await searchParams;
  const one = (value: string | string[] | undefined) => (typeof value === 'string' ? value : undefined);
  return actor.role === 'coordinator' ? (
    <AllNext actor={actor} site={one(site)} mix={one(mix)} />
  ) : (
    <SiteNext actor={actor} site={one(site)} mix={one(mix)} />
  );
}
