import { currentActor } from '@/lib/access/current';
import { readSnapshot } from '@/lib/access/scoped-db';
import { readComparison } from '@/lib/analysis/comparison/read-comparison';
import { comparisonCsv } from '@/lib/report/comparison-csv';
import { placeNames } from '@/lib/ui/comparison/place-names';

export async function GET(request: Request): Promise<Response> {
  const actor = await currentActor();
  const query = Object.fromEntries(new URL(request.url).searchParams);
  const page =
    actor?.role === 'coordinator'
      ? await readSnapshot(actor, (context) => readComparison(context, query, new Date()))
      : undefined;
  if (!actor || !page) return new Response(null, { status: 404 });
  const { filter } = page;
  const names = await placeNames(page.choices, actor.language);
  const { total, methods, sites, cells } = page.comparison;
  const rows = [...names.sorted(methods), ...names.sorted(sites), ...names.sorted(cells)];
  const { from, to, container } = filter;
  const species = names.speciesName(filter.species);
  const scope = { species, container, material: names.materialName(filter.material), from, to };
  return new Response(comparisonCsv(total, rows, names, scope), {
    headers: {
      'content-type': 'text/csv; charset=utf-8',
      'content-disposition': `attachment; filename="comparison-${container}-${from}-${to}-${rows.length + 1}-rows.csv"`,
      'cache-control': 'private, no-store',
    },
  });
}
