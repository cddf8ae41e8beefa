-- Every record that says that something went from one thing into another, earlier to later, as one list that a trace walks
-- over. It is read as whoever asks: the row policies of each table hold. `void_reason` is null while the record and both its
-- ends count; `later_seen` is false where the later end, a second life at another site, is out of the reader's sight.

create function app.first_reason(variadic reasons text[]) returns text language sql immutable parallel safe as
  $$ select reason from unnest(reasons) as reason where reason is not null limit 1 $$;

create view app.trace_link with (security_invoker = true) as
select c.network_id, 'spawn-lot' as from_kind, c.parent_lot_id as from_id, 'spawn-lot' as to_kind, c.id as to_id,
  null::integer as amount, true as later_seen,
  app.first_reason(
    case when p.voided_at is not null then p.void_reason end, case when c.voided_at is not null then c.void_reason end
  ) as void_reason
from public.spawn_lot c
join public.spawn_lot p on p.network_id = c.network_id and p.id = c.parent_lot_id
union all
select s.network_id, 'spawn-lot', s.spawn_lot_id, 'batch', s.batch_id, s.grams, true,
  app.first_reason(
    case when l.voided_at is not null then l.void_reason end, case when b.voided_at is not null then b.void_reason end,
    case when s.voided_at is not null then s.void_reason end)
from public.spawn_share s
join public.spawn_lot l on l.network_id = s.network_id and l.id = s.spawn_lot_id
join public.batch b on b.network_id = s.network_id and b.id = s.batch_id
union all
select c.network_id, 'substrate-lot', c.substrate_lot_id, 'batch', c.batch_id, c.grams, true,
  app.first_reason(
    case when l.voided_at is not null then l.void_reason end, case when b.voided_at is not null then b.void_reason end,
    case when c.voided_at is not null then c.void_reason end)
from public.batch_component c
join public.substrate_lot l on l.network_id = c.network_id and l.id = c.substrate_lot_id
join public.batch b on b.network_id = c.network_id and b.id = c.batch_id
union all
select c.network_id, 'treatment', c.treatment_run_id, 'batch', c.batch_id, c.grams, true,
  app.first_reason(
    case when r.voided_at is not null then r.void_reason end, case when b.voided_at is not null then b.void_reason end,
    case when c.voided_at is not null then c.void_reason end)
from public.batch_component c
join public.treatment_run r on r.network_id = c.network_id and r.id = c.treatment_run_id
join public.batch b on b.network_id = c.network_id and b.id = c.batch_id
union all
select l.network_id, 'batch', l.source_batch_id, 'batch', l.batch_id, l.units_moved, later.id is not null,
  app.first_reason(
    case when first.voided_at is not null then first.void_reason end,
    case when later.voided_at is not null then later.void_reason end, case when l.voided_at is not null then l.void_reason end)
from public.second_life_source l
left join public.batch first on first.network_id = l.network_id and first.id = l.source_batch_id
left join public.batch later on later.network_id = l.network_id and later.id = l.batch_id
union all
select l.network_id, 'batch', l.batch_id, 'weighing', l.weighing_id, l.fresh_grams, true,
  app.first_reason(
    case when b.voided_at is not null then b.void_reason end, case when w.voided_at is not null then w.void_reason end,
    case when l.voided_at is not null then l.void_reason end)
from public.weighing_line l
join public.batch b on b.network_id = l.network_id and b.id = l.batch_id
join public.weighing w on w.network_id = l.network_id and w.id = l.weighing_id;

grant select on app.trace_link to pinset_app;
