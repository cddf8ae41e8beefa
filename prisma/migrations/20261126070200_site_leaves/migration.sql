-- A site leaves its network: no new records, hidden from choices, its records counted on or taken out as it wishes.

alter table public.site add column "left_at" TIMESTAMPTZ(3), add column "figures_withdrawn" BOOLEAN NOT NULL DEFAULT false;
alter table public.site add constraint site_withdrawn_when_left check (left_at is not null or not figures_withdrawn);

-- Writers at a site hold its lock shared until they commit; leaving takes it alone. So a record is either committed before the
-- site leaves, and leaves with it, or refused: none is written beside the leaving.
create function app.refuse_left_site() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
declare one record;
begin
  for one in select distinct a.network_id, a.site_id from added a where a.site_id is not null order by 1, 2 loop
    perform pg_advisory_xact_lock_shared(hashtextextended('site ' || one.site_id, 0));
    if exists (select 1 from public.site s where s.network_id = one.network_id and s.id = one.site_id and s.left_at is not null) then
      raise exception 'the site has left the network' using errcode = 'PB007';
    end if;
  end loop;
  return null;
end $$;
alter function app.refuse_left_site() owner to pinset_definer;
revoke execute on function app.refuse_left_site() from public;

do $$
declare t text;
begin
  for t in select c.relname from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attname = 'site_id' and not a.attisdropped
    where c.relnamespace = 'public'::regnamespace and c.relkind = 'r'
      and c.relname not in ('history', 'fitted_result', 'batch_outcome', 'outcome_summary', 'outcome_due', 'sharing_agreement',
        'membership_site', 'participant_contact', 'photo_content', 'intake_file')
      and c.relname not like 'outcome\_%'
  loop
    execute format('create trigger refuse_left_site after insert on public.%I referencing new table as added
      for each statement execute function app.refuse_left_site()', t);
  end loop;
end $$;

-- Lets a site leave. Its members and the coordinator may. `withdraw`: its records are taken out of every figure, each with
-- the reason, and stay readable to the coordinator as what was voided. False where there is no such site or it left before.
create function app.leave_site(wanted uuid, withdraw boolean, reason text) returns boolean
  language plpgsql security definer set search_path = public, pg_temp as $$
declare here uuid := app.network_id(); t text;
begin
  if app.member_role() is distinct from 'coordinator' and not (wanted = any (app.site_ids())) then
    return false;
  end if;
  perform pg_advisory_xact_lock(hashtextextended('site ' || wanted, 0));
  update public.site s set left_at = now(), figures_withdrawn = withdraw,
      closed_on = coalesce(s.closed_on, (now() at time zone s.time_zone)::date)
    where s.network_id = here and s.id = wanted and s.left_at is null and s.voided_at is null;
  if not found then
    return false;
  end if;
  if withdraw then
    for t in select c.relname from pg_class c
      where c.relnamespace = 'public'::regnamespace and c.relkind = 'r'
        and c.relname in ('weighing_line', 'weighing_destination', 'weighing', 'look', 'finding', 'loss', 'check', 'batch', 'treatment_run',
          'cost_note', 'sale', 'training', 'participant', 'adopted_practice')
        and (select count(*) from pg_attribute a where a.attrelid = c.oid and a.attname in ('site_id', 'voided_at', 'void_reason') and not a.attisdropped) = 3
      order by c.relname
    loop
      execute format('update public.%I r set voided_at = now(), void_reason = $3
        where r.network_id = $1 and r.site_id = $2 and r.voided_at is null', t) using here, wanted, reason;
    end loop;
  end if;
  update public.membership_site m set ended_at = now() where m.network_id = here and m.site_id = wanted and m.ended_at is null;
  update public.invitation i set site_ids = array_remove(i.site_ids, wanted)
    where i.network_id = here and i.accepted_at is null and wanted = any (i.site_ids);
  insert into public.sharing_agreement (network_id, site_id, with_members, with_funder, created_by_id)
    values (here, wanted, 'not_at_all', 'not_at_all', app.person_id())
    on conflict (network_id, site_id) do update set with_members = 'not_at_all', with_funder = 'not_at_all';
  return true;
end $$;
alter function app.leave_site(uuid, boolean, text) owner to pinset_definer;
revoke execute on function app.leave_site(uuid, boolean, text) from public;
grant execute on function app.leave_site(uuid, boolean, text) to pinset_app, pinset_definer;
grant insert, update on public.sharing_agreement to pinset_definer;

-- How many sites have left, and whether their records still count: told beside the sums to everybody who reads them.
create function app.sites_left() returns table (counted bigint, withdrawn bigint)
  language sql stable security definer set search_path = public, pg_temp as $$
  select count(*) filter (where not s.figures_withdrawn), count(*) filter (where s.figures_withdrawn)
  from public.site s where s.network_id = app.network_id() and s.left_at is not null and s.voided_at is null
    and app.member_role() is not null
$$;
alter function app.sites_left() owner to pinset_definer;
revoke execute on function app.sites_left() from public;
grant execute on function app.sites_left() to pinset_app, pinset_definer;
