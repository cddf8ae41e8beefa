import { handler as stratified } from '../handlers/03-stratified';
import type { ReferenceContext } from '../reference-handler';
import type { NetworkBatch } from './network-data';

/** Every method against the first one, stratified by site: the tables, and the answers of the stratified comparison. */
export function againstFirst(
  closed: readonly NetworkBatch[],
  methods: readonly string[],
  sites: readonly string[],
  context: ReferenceContext,
) {
  const [first = '', ...others] = methods;
  const sums = (method: string, key: 'contaminated' | 'units') =>
    sites.map((site) =>
      closed
        .filter((own) => own.method === method && own.site === site)
        .reduce((sum, own) => sum + own[key], 0),
    );
  return others.map((method) => {
    const strata = {
      stratum: sites,
      x1: sums(method, 'contaminated'),
      n1: sums(method, 'units'),
      x2: sums(first, 'contaminated'),
      n2: sums(first, 'units'),
    };
    return { method, strata, ...stratified.run({ conf: 0.95, strata }, context) };
  });
}
