-- A trace goes on past what a site took out of the figures when it left: what went on from there to other sites is still
-- theirs to be told of. Such a record was voided at the very instant of the leaving.

create function app.out_with_its_site(network uuid, site uuid, voided_at timestamptz) returns boolean language sql stable as $$
  select out_with_its_site.voided_at is null or exists (select 1 from public.site s
    where s.network_id = out_with_its_site.network and s.id = out_with_its_site.site and s.figures_withdrawn
      and s.left_at = out_with_its_site.voided_at)
$$;
revoke execute on function app.out_with_its_site(uuid, uuid, timestamptz) from public;
grant execute on function app.out_with_its_site(uuid, uuid, timestamptz) to pinset_app, pinset_definer;

-- `withdrawn`: the link does not count, and for no other reason than that a site at its ends withdrew its figures.
create or replace view app.trace_link with (security_invoker = true) as
select c.network_id, 'spawn-lot' as from_kind, c.parent_lot_id as from_id, 'spawn-lot' as to_kind, c.id as to_id,
  null::integer as amount, true as later_seen,
  app.first_reason(
    case when p.voided_at is not null then p.void_reason end, case when c.voided_at is not null then c.void_reason end
  ) as void_reason,
  false as withdrawn
from public.spawn_lot c
join public.spawn_lot p on p.network_id = c.network_id and p.id = c.parent_lot_id
union all
select s.network_id, 'spawn-lot', s.spawn_lot_id, 'batch', s.batch_id, s.grams, true,
  app.first_reason(
    case when l.voided_at is not null then l.void_reason end, case when b.voided_at is not null then b.void_reason end,
    case when s.voided_at is not null then s.void_reason end),
  l.voided_at is null and s.voided_at is null and b.voided_at is not null and app.out_with_its_site(b.network_id, b.site_id, b.voided_at)
from public.spawn_share s
join public.spawn_lot l on l.network_id = s.network_id and l.id = s.spawn_lot_id
join public.batch b on b.network_id = s.network_id and b.id = s.batch_id
union all
select c.network_id, 'substrate-lot', c.substrate_lot_id, 'batch', c.batch_id, c.grams, true,
  app.first_reason(
    case when l.voided_at is not null then l.void_reason end, case when b.voided_at is not null then b.void_reason end,
    case when c.voided_at is not null then c.void_reason end),
  l.voided_at is null and c.voided_at is null and b.voided_at is not null and app.out_with_its_site(b.network_id, b.site_id, b.voided_at)
from public.batch_component c
join public.substrate_lot l on l.network_id = c.network_id and l.id = c.substrate_lot_id
join public.batch b on b.network_id = c.network_id and b.id = c.batch_id
union all
select c.network_id, 'treatment', c.treatment_run_id, 'batch', c.batch_id, c.grams, true,
  app.first_reason(
    case when r.voided_at is not null then r.void_reason end, case when b.voided_at is not null then b.void_reason end,
    case when c.voided_at is not null then c.void_reason end),
  c.voided_at is null and (r.voided_at is not null or b.voided_at is not null)
    and app.out_with_its_site(r.network_id, r.site_id, r.voided_at) and app.out_with_its_site(b.network_id, b.site_id, b.voided_at)
from public.batch_component c
join public.treatment_run r on r.network_id = c.network_id and r.id = c.treatment_run_id
join public.batch b on b.network_id = c.network_id and b.id = c.batch_id
union all
select l.network_id, 'batch', l.source_batch_id, 'batch', l.batch_id, l.units_moved, later.id is not null,
  app.first_reason(
    case when first.voided_at is not null then first.void_reason end,
    case when later.voided_at is not null then later.void_reason end, case when l.voided_at is not null then l.void_reason end),
  l.voided_at is null and (first.voided_at is not null or later.voided_at is not null)
    and (first.id is null or app.out_with_its_site(first.network_id, first.site_id, first.voided_at)) and (later.id is null or app.out_with_its_site(later.network_id, later.site_id, later.voided_at))
from public.second_life_source l
left join public.batch first on first.network_id = l.network_id and first.id = l.source_batch_id
left join public.batch later on later.network_id = l.network_id and later.id = l.batch_id
union all
select l.network_id, 'batch', l.batch_id, 'weighing', l.weighing_id, l.fresh_grams, true,
  app.first_reason(
    case when b.voided_at is not null then b.void_reason end, case when w.voided_at is not null then w.void_reason end,
    case when l.voided_at is not null then l.void_reason end),
  (b.voided_at is not null or w.voided_at is not null or l.voided_at is not null)
    and app.out_with_its_site(b.network_id, b.site_id, b.voided_at) and app.out_with_its_site(w.network_id, w.site_id, w.voided_at) and app.out_with_its_site(l.network_id, l.site_id, l.voided_at)
from public.weighing_line l
join public.batch b on b.network_id = l.network_id and b.id = l.batch_id
join public.weighing w on w.network_id = l.network_id and w.id = l.weighing_id;
