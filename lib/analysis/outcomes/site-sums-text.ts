import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type Sql, sql } from '@/lib/database/sql-text';
import type { SiteDates } from '../comparison/batch-facts';
import { boundsOf } from '../comparison/read-batch-rows';
import { apartText } from './apart-batches';
import type { BesideSums, DaysHeld } from './beside-sums';
import { daysAtSites } from './days-at-sites';
import { quartersBeyond, stretchesOf } from './quarters-held';
import { oldestOf } from './remembered-years';
import { type SiteTotalsAsked, siteTotalsText } from './site-totals-text';
import { youngText } from './young-batches';

export type SiteSumsAsked = SiteTotalsAsked & {
  readonly today: SiteDates;
  /** What is remembered beside the sums, and what is to be held of it. */
  readonly before: BesideSums | undefined;
  readonly held: DaysHeld;
};

/**
 * The statement of `readSiteSums`. Kept sums (of one material those that tell materials apart) hold whole quarters, and each
 * batch as if its day had come; batches at the period's ends (`near`) and what is beside the sums come along. They leave the
 * database as columns, one row a class. Sums are taken in double precision, exact for whole numbers up to 2^53 and several
 * times faster than in numeric.
 */
export function siteSumsText(context: ReadContext, asked: SiteSumsAsked): Sql {
  const { wanted, period, today, since, before, held, heldYears } = asked;
  const sinceBeside = before?.version ?? null;
  const writtenBeside = sql`(select sites from written_beside)::uuid[]`;
  const ofContainer = { day: held.day, container: wanted.container };
  const heldBefore = before?.quarters ?? [];
  const network = context.actor.networkId;
  const { from, to, species, container, material } = boundsOf(wanted);
  // Spelled out: of spans to be joined the database thinks that they hold few sums.
  const spans = sql`((span = 'year' and starts_on = any (${[...period.years]}::date[]))
    or (span = 'quarter' and starts_on = any (${[...period.quarters]}::date[])))`;
  const log = wanted.container === 'log';
  const [[start, end] = [null, null], [laterStart, laterEnd] = [null, null]] = period.days;
  const { first, later, twoLater } = daysAtSites(today);
  return sql`
    with written as materialized (
      select array_agg(site_id) as sites from outcome_site_version where network_id = ${network}::uuid and version > ${since}::bigint
    ), written_beside as materialized (
      select array_agg(site_id) as sites from outcome_site_version where network_id = ${network}::uuid and version > ${sinceBeside}::bigint
    ), written_years as materialized (
      select array_agg(site_id) as sites from outcome_site_version
      where network_id = ${network}::uuid and version > ${oldestOf(heldYears)}::bigint
    ), near as (
      select o.*, (coalesce(o.inoculated_on between ${start}::date and ${end}::date, false)
          or coalesce(o.inoculated_on between ${laterStart}::date and ${laterEnd}::date, false))::int as inside,
        coalesce(o.contamination_enters_on - (o.site_id = any (${later}::uuid[]))::int - (o.site_id = any (${twoLater}::uuid[]))::int
          > ${first}::date, false)::int as young,
        coalesce(o.yield_enters_on - (o.site_id = any (${later}::uuid[]))::int - (o.site_id = any (${twoLater}::uuid[]))::int
          > ${first}::date, false)::int as unripe
      from app.outcome_row o
      where o.network_id = ${network}::uuid and o.container = ${container} and o.inoculated_on between ${from}::date and ${to}::date
        and (${species}::uuid is null or o.species_id = ${species}::uuid)
        and (${material}::text is null or o.material_key = ${material}::text)
        and (o.inoculated_on between ${start}::date and ${end}::date
          or o.inoculated_on between ${laterStart}::date and ${laterEnd}::date)
        and (${since}::bigint is null or site_id = any ((select sites from written)::uuid[]))
    ), near_columns as (
      select json_build_array(method_key, material_key, contamination_class, yield_class, cropped, life_class,
        array_agg(site_id)::text, array_agg(cluster)::text,
        array_agg(inside + 2 * young + 4 * unripe + 8 * apart::int + 16 * run_missing::int + 32 * any_trimmed::int
          + 64 * any_as_picked::int + 128 * dry_assumed::int + 256 * any_shared::int)::text, array_agg(units)::text,
        (array_agg(contaminated) filter (where c))::text, (array_agg(contaminated_later) filter (where c))::text,
        (array_agg(lost_clean) filter (where c))::text, (array_agg(fresh) filter (where y))::text,
        (array_agg(yield_over) filter (where y))::text, (array_agg(fresh_later) filter (where y))::text,
        (array_agg(open_units) filter (where y and log))::text, (array_agg(open_unit_days) filter (where y and log))::text,
        (array_agg(life_fresh) filter (where log))::text, (array_agg(coalesce(life_dry, 0)) filter (where log))::text) as class
      from (select *, contamination_class = 'counted' as c, yield_class = 'counted' as y, ${container} = 'log' as log
        from near offset 0) n
      group by method_key, material_key, contamination_class, yield_class, cropped, life_class
    ), by_site as (
      ${siteTotalsText(context, asked, spans)}
      union all
      select site_id, method_key, null::date as year, c * batches, c * n * batches, c * n * units, c * numerator, c * later, c * lost_clean,
        y * n * batches, y * n * units, y * numerator, y * denominator, y * later, k * batches, k * units, k * denominator, k * later,
        y * open_units, y * open_unit_days, k * open_units, k * open_unit_days, l * n * batches, l * n * units, l * numerator, l * denominator
      from (select *, (measure = 'contamination')::int as c, (measure = 'yield')::int as y, (measure = 'cropped')::int as k,
        (measure = 'life')::int as l, (class = 'counted')::int as n from outcome_summary where ${spans}) of_material
      where material_key = ${material}::text and network_id = ${network}::uuid and container = ${container}
        and (${species}::uuid is null or species_id = ${species}::uuid)
        and (${since}::bigint is null or site_id = any ((select sites from written)::uuid[]))
    ), sums as (
      select site_id, method_key, year, sum(batches::float8) as batches,
        sum(contamination_batches::float8) as c, sum(contamination_units::float8) as cu, sum(contaminated::float8) as ca,
        sum(contaminated_later::float8) as cl, sum(lost_clean::float8) as lc, sum(yield_batches::float8) as y,
        sum(yield_units::float8) as yu, sum(fresh::float8) as f, sum(yield_over::float8) as yo, sum(fresh_later::float8) as yl,
        sum(cropped_batches::float8) as k, sum(cropped_units::float8) as ku, sum(cropped_over::float8) as ko, sum(cropped_later::float8) as kl,
        ${
          log
            ? sql`sum(open_units::float8) as ou, sum(open_unit_days::float8) as od, sum(cropped_open_units::float8) as kou,
              sum(cropped_open_unit_days::float8) as kod, sum(life_batches::float8) as l, sum(life_units::float8) as lu,
              sum(life_fresh::float8) as lf, sum(life_dry::float8) as ld`
            : sql`null as ou, null as od, null as kou, null as kod, null as l, null as lu, null as lf, null as ld`
        }
      from by_site group by site_id, method_key, year
    ), network_totals as (
      select json_build_array(method_key, material_key, measure, class, sum(batches), sum(units), sum(runs),
        sum(run_missing), sum(trimmed), sum(as_picked), sum(dry_assumed), sum(shared)) as sum
      from outcome_network_total where ${spans} and network_id = ${network}::uuid and container = ${container}
        and (${species}::uuid is null or species_id = ${species}::uuid)
        and (${material}::text is null or material_key = ${material}::text)
      group by method_key, material_key, measure, class
    )
    select array_agg(site_id)::text as sites, array_agg(method_key)::text as methods, array_agg(coalesce(extract(year from year)::int, 0))::text as years,
      array_agg(batches)::text as batches,
      array_agg(c)::text as "contaminationBatches", array_agg(cu)::text as "contaminationUnits", array_agg(ca)::text as contaminated,
      array_agg(cl)::text as "contaminatedLater", array_agg(lc)::text as "lostClean", array_agg(y)::text as "yieldBatches",
      array_agg(yu)::text as "yieldUnits", array_agg(f)::text as fresh, array_agg(yo)::text as "yieldOver", array_agg(yl)::text as "freshLater",
      array_agg(k)::text as "croppedBatches", array_agg(ku)::text as "croppedUnits", array_agg(ko)::text as "croppedOver",
      array_agg(kl)::text as "croppedLater",
      (array_agg(ou) filter (where log))::text as "openUnits", (array_agg(od) filter (where log))::text as "openUnitDays",
      (array_agg(kou) filter (where log))::text as "croppedOpenUnits", (array_agg(kod) filter (where log))::text as "croppedOpenUnitDays",
      (array_agg(l) filter (where log))::text as "lifeBatches", (array_agg(lu) filter (where log))::text as "lifeUnits",
      (array_agg(lf) filter (where log))::text as "lifeFresh", (array_agg(ld) filter (where log))::text as "lifeDry",
      (select json_agg(class)::text from near_columns) as near, (select json_agg(sum)::text from network_totals) as network,
      ${youngText(context, { ...ofContainer, written: before && writtenBeside })} as young,
      ${apartText(context, {
        container: wanted.container,
        missing: stretchesOf(quartersBeyond(held.quarters, heldBefore)),
        held: { stretches: stretchesOf(heldBefore), written: writtenBeside },
      })} as apart,
      (select version from outcome_version where network_id = ${network}::uuid) as version,
      (select sites::text[] from written) as written, (select sites::text[] from written_beside) as "writtenBeside",
      (select sites::text[] from written_years) as "writtenYears"
    from (select *, ${container} = 'log' as log from sums) s`;
}
