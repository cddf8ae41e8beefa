import { requireActor } from '@/lib/access/current';
import { parseNextAsked } from '@/lib/analysis/next-question/next-choice.input';
import { AllNext } from './all-next';
import { SiteNext } from './site-next';

export default async function NextPage({ searchParams }: PageProps<'/questions/next'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const asked = parseNextAsked(address);
  if (asked.site !== undefined || actor.role === 'member') return <SiteNext actor={actor} asked={asked} />;
  const { site: _site, ...chosen } = asked;
  const choosing = Object.values(chosen).some((one) => one !== undefined);
  return <AllNext actor={actor} choosing={choosing} address={address} />;
}
