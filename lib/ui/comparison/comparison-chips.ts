import type { Route } from 'next';
import {
  type ComparisonFilter,
  queryOfFilter,
  together,
} from '@/lib/analysis/comparison/comparison-filter.input';
import type { FilterChip } from '../form/filter-form';
import type { PlaceNames } from './place-names';

/** What narrows the comparison beyond species, container and period, each with the address without it. */
export function comparisonChips(filter: ComparisonFilter, names: PlaceNames): FilterChip[] {
  const { method, site, material } = filter;
  const without = (change: Partial<ComparisonFilter>) =>
    `/comparison?${queryOfFilter({ ...filter, ...change })}` as Route;
  const chips: FilterChip[] = [];
  if (method !== undefined) {
    chips.push({ label: names.methodName(method), without: without({ method: undefined }) });
  }
  if (site !== undefined) chips.push({ label: names.siteName(site), without: without({ site: undefined }) });
  if (material !== together) {
    chips.push({ label: names.materialName(material), without: without({ material: together }) });
  }
  return chips;
}
