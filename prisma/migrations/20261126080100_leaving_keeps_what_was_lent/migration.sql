-- A site that withdraws its figures leaves others what it lent them; what is refused since it left has a code of its own;
-- nobody joins a site that has left.

create or replace function app.refuse_left_site() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
declare one record;
begin
  for one in select distinct a.network_id, a.site_id from added a where a.site_id is not null order by 1, 2 loop
    perform pg_advisory_xact_lock_shared(hashtextextended('site ' || one.site_id, 0));
    if exists (select 1 from public.site s where s.network_id = one.network_id and s.id = one.site_id and s.left_at is not null) then
      raise exception 'the site has left the network' using errcode = 'PB008';
    end if;
  end loop;
  return null;
end $$;

-- Lets a site leave. Its members and the coordinator may. `withdraw`: its records are taken out of every figure, each with
-- the reason, and stay readable to the coordinator as what was voided; runs that another site was lent stay, with their
-- costs, since its batches stand on them. False where there is no such site or it left before.
create or replace function app.leave_site(wanted uuid, withdraw boolean, reason text) returns boolean
  language plpgsql security definer set search_path = public, pg_temp as $$
declare here uuid := app.network_id(); t text; lent uuid[];
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
    lent := array(select r.id from public.treatment_run r where r.network_id = here and r.site_id = wanted and r.voided_at is null and (
      exists (select 1 from public.batch_component c
        join public.batch b on b.network_id = c.network_id and b.id = c.batch_id and b.voided_at is null
        where c.network_id = here and c.treatment_run_id = r.id and c.site_id <> wanted and c.voided_at is null)
      or exists (select 1 from public.treatment_allocation a
        where a.network_id = here and a.treatment_run_id = r.id and a.site_id <> wanted and a.voided_at is null)));
    for t in select c.relname from pg_class c
      where c.relnamespace = 'public'::regnamespace and c.relkind = 'r'
        and c.relname in ('weighing_line', 'weighing_destination', 'weighing', 'look', 'finding', 'loss', 'check', 'batch', 'treatment_run',
          'cost_note', 'sale', 'training', 'participant', 'adopted_practice')
        and (select count(*) from pg_attribute a where a.attrelid = c.oid and a.attname in ('site_id', 'voided_at', 'void_reason') and not a.attisdropped) = 3
      order by c.relname
    loop
      execute format('update public.%I r set voided_at = now(), void_reason = $3
        where r.network_id = $1 and r.site_id = $2 and r.voided_at is null %s', t, case t
          when 'treatment_run' then 'and r.id <> all ($4)'
          when 'cost_note' then 'and (r.treatment_run_id is null or r.treatment_run_id <> all ($4))' else '' end)
        using here, wanted, reason, lent;
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

create or replace function app.accept_invitation(wanted_token_hash text, joining_person uuid, new_name text, new_email text, new_password_hash text)
  returns table (network_id uuid, membership_id uuid)
  language plpgsql security definer set search_path = public, pg_temp as $$
#variable_conflict use_column
declare i public.invitation%rowtype; m uuid;
begin
  select * into i from public.invitation x where x.token_hash = wanted_token_hash and x.accepted_at is null
    and x.voided_at is null and x.expires_at > now() for update;
  if not found then
    return;
  end if;
  if not exists (select 1 from public.person p where p.id = joining_person) then
    insert into public.person (id) values (joining_person);
    insert into public.person_contact (person_id, name, email) values (joining_person, new_name, lower(trim(new_email)));
    insert into public.account (person_id, password_hash) values (joining_person, new_password_hash);
  elsif app.person_id() is distinct from joining_person then
    raise exception 'only the signed-in person can join' using errcode = 'PB005';
  end if;
  perform set_config('app.person_id', joining_person::text, true);
  select x.id into m from public.membership x where x.network_id = i.network_id and x.person_id = joining_person;
  if m is null then
    insert into public.membership (network_id, person_id, role, created_by_id)
      values (i.network_id, joining_person, i.role, joining_person) returning id into m;
  else
    update public.membership x set role = i.role, ended_at = null where x.network_id = i.network_id and x.id = m;
  end if;
  insert into public.membership_site (network_id, membership_id, site_id, created_by_id)
    select i.network_id, m, s, joining_person from unnest(i.site_ids) s
    where exists (select 1 from public.site t where t.network_id = i.network_id and t.id = s and t.left_at is null)
    on conflict (network_id, membership_id, site_id) do update set ended_at = null;
  update public.invitation x set accepted_at = now(), accepted_by_id = joining_person where x.network_id = i.network_id and x.id = i.id;
  return query select i.network_id, m;
end $$;
