-- The few questions that are asked before there is an actor. Each answers at most one row.

create function app.sign_in_lookup(wanted_email text)
  returns table (person_id uuid, password_hash text, disabled boolean, locked boolean)
  language sql stable security definer set search_path = public, pg_temp as $$
  select a.person_id, a.password_hash, p.disabled_at is not null, coalesce(a.locked_until > now(), false)
  from public.person_contact c join public.account a on a.person_id = c.person_id join public.person p on p.id = c.person_id
  where c.email = lower(trim(wanted_email)) limit 1
$$;

create function app.note_sign_in_failure(failed_person uuid) returns void
  language sql security definer set search_path = public, pg_temp as $$
  update public.account set failed_count = failed_count + 1,
    locked_until = case when failed_count + 1 >= 10 then now() + interval '15 minutes' else locked_until end
  where person_id = failed_person
$$;

create function app.session_lookup(wanted uuid)
  returns table (session_id uuid, person_id uuid, person_name text, language public.language, region text,
    mass_unit public.mass_unit, temperature_unit public.temperature_unit, volume_unit public.volume_unit,
    network_id uuid, network_name text, network_region text, network_time_zone text,
    membership_id uuid, member_role public.membership_role, site_ids uuid[])
  language sql stable security definer set search_path = public, pg_temp as $$
  select s.id, s.person_id, c.name, p.language, p.region, p.mass_unit, p.temperature_unit, p.volume_unit,
    n.id, n.name, n.region, n.time_zone, m.id, m.role,
    coalesce((select array_agg(ms.site_id) from public.membership_site ms
      where ms.network_id = m.network_id and ms.membership_id = m.id and ms.ended_at is null), '{}')
  from public.session s
  join public.person p on p.id = s.person_id and p.disabled_at is null
  left join public.person_contact c on c.person_id = p.id
  left join public.membership m on m.network_id = s.network_id and m.person_id = s.person_id
    and m.ended_at is null and m.voided_at is null
  left join public.network n on n.id = m.network_id
  where s.id = wanted and s.ended_at is null and s.expires_at > now()
    and s.last_seen_at > now() - interval '30 days'
  limit 1
$$;

create function app.invitation_lookup(wanted_token_hash text)
  returns table (network_name text, member_role public.membership_role, for_name text, expires_at timestamptz)
  language sql stable security definer set search_path = public, pg_temp as $$
  select n.name, i.role, i.for_name, i.expires_at
  from public.invitation i join public.network n on n.id = i.network_id
  where i.token_hash = wanted_token_hash and i.accepted_at is null and i.voided_at is null and i.expires_at > now() limit 1
$$;

-- Joins a person to a network. A new person brings name, e-mail and password hash; a known one only their id.
create function app.accept_invitation(wanted_token_hash text, joining_person uuid, new_name text, new_email text, new_password_hash text)
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
    where exists (select 1 from public.site t where t.network_id = i.network_id and t.id = s)
    on conflict (network_id, membership_id, site_id) do update set ended_at = null;
  update public.invitation x set accepted_at = now(), accepted_by_id = joining_person where x.network_id = i.network_id and x.id = i.id;
  return query select i.network_id, m;
end $$;

create function app.setup_link_lookup(wanted_token_hash text) returns boolean
  language sql stable security definer set search_path = public, pg_temp as $$
  select exists (select 1 from public.setup_link s where s.token_hash = wanted_token_hash and s.used_at is null and s.expires_at > now())
$$;

-- Makes a network with its first coordinator from an unused setup link.
create function app.use_setup_link(wanted_token_hash text, new_person uuid, new_name text, new_email text, new_password_hash text,
  network_name text, network_code text, network_time_zone text, network_region text)
  returns table (network_id uuid)
  language plpgsql security definer set search_path = public, pg_temp as $$
#variable_conflict use_column
declare l uuid; n uuid := uuidv7();
begin
  select s.id into l from public.setup_link s where s.token_hash = wanted_token_hash and s.used_at is null and s.expires_at > now() for update;
  if not found then
    return;
  end if;
  perform set_config('app.person_id', new_person::text, true);
  if not exists (select 1 from public.person p where p.id = new_person) then
    insert into public.person (id) values (new_person);
    insert into public.person_contact (person_id, name, email) values (new_person, new_name, lower(trim(new_email)));
    insert into public.account (person_id, password_hash) values (new_person, new_password_hash);
  end if;
  insert into public.network (id, name, code, time_zone, region) values (n, network_name, network_code, network_time_zone, network_region);
  insert into public.membership (network_id, person_id, role, created_by_id) values (n, new_person, 'coordinator', new_person);
  update public.setup_link set used_at = now() where id = l;
  return query select n;
end $$;

-- A person's own networks, whichever one the session has open.
create function app.my_networks() returns table (network_id uuid, network_name text, member_role public.membership_role)
  language sql stable security definer set search_path = public, pg_temp as $$
  select n.id, n.name, m.role from public.membership m join public.network n on n.id = m.network_id
  where m.person_id = app.person_id() and m.ended_at is null and m.voided_at is null order by n.name
$$;

do $$
declare f regprocedure;
begin
  for f in select p.oid::regprocedure from pg_proc p join pg_namespace n on n.oid = p.pronamespace
    where n.nspname = 'app' and p.proname in ('sign_in_lookup', 'note_sign_in_failure', 'session_lookup', 'invitation_lookup',
      'accept_invitation', 'setup_link_lookup', 'use_setup_link', 'my_networks')
  loop
    execute format('alter function %s owner to pinset_definer', f);
  end loop;
end $$;
revoke execute on all functions in schema app from public;
grant execute on all functions in schema app to pinset_app, pinset_definer;
revoke execute on function app.write_history(), app.write_invitation_history(), app.check_batch_counts(),
  app.check_batch_after_correction(), app.check_weighing() from pinset_app;

-- For the operator, who runs as the owner: make the first link, and ask whether there is a network yet.
create function app.make_setup_link(new_token_hash text, valid_for interval) returns uuid
  language sql security definer set search_path = public, pg_temp as $$
  insert into public.setup_link (token_hash, expires_at) values (new_token_hash, now() + valid_for) returning id
$$;
create function app.network_count() returns bigint
  language sql stable security definer set search_path = public, pg_temp as $$ select count(*) from public.network $$;
alter function app.make_setup_link(text, interval) owner to pinset_definer;
alter function app.network_count() owner to pinset_definer;
revoke execute on function app.make_setup_link(text, interval), app.network_count() from public, pinset_app;
do $$ begin execute format('grant execute on function app.make_setup_link(text, interval), app.network_count() to %I', current_user); end $$;
