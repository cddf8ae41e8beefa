-- A person leaves a network: their name, address and sign-in are erased, their records stay under an id that leads to nobody.

alter table public.membership add column "erased_at" TIMESTAMPTZ(3);

-- A network is never left without somebody who can let others in. Under a lock, since two coordinators may leave at once.
create function app.keep_last_coordinator() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
begin
  if new.ended_at is null then
    new.erased_at := null;
  end if;
  if app.person_id() is null or old.role <> 'coordinator' or old.ended_at is not null or old.voided_at is not null
     or (new.role = 'coordinator' and new.ended_at is null and new.voided_at is null) then
    return new;
  end if;
  perform pg_advisory_xact_lock(hashtextextended('coordinators ' || old.network_id, 0));
  if not exists (select 1 from public.membership m join public.person p on p.id = m.person_id and p.disabled_at is null
    where m.network_id = old.network_id and m.id <> old.id and m.role = 'coordinator' and m.ended_at is null and m.voided_at is null) then
    raise exception 'the last coordinator of a network cannot go' using errcode = 'PB006';
  end if;
  return new;
end $$;
alter function app.keep_last_coordinator() owner to pinset_definer;
revoke execute on function app.keep_last_coordinator() from public;
create trigger keep_last_coordinator before update on public.membership for each row execute function app.keep_last_coordinator();

-- Whoever was erased in a network is nobody there, even while they go on in another one.
create function app.knows_person(other uuid) returns boolean
  language sql stable security definer set search_path = public, pg_temp as $$
  select exists (select 1 from public.membership m
    where m.network_id = app.network_id() and m.person_id = other and m.erased_at is null)
$$;
drop policy network_contact on public.person_contact;
create policy network_contact on public.person_contact for select to pinset_app
  using ((select app.member_role()) = 'coordinator' and app.knows_person(person_id));
create or replace function app.colleague_name(other uuid) returns text
  language sql stable security definer set search_path = public, pg_temp as $$
  select c.name from public.person_contact c
  where c.person_id = other and app.member_role() in ('coordinator', 'member')
    and exists (select 1 from public.membership m
      where m.network_id = app.network_id() and m.person_id = other and m.erased_at is null)
$$;

-- Whether the actor may take along, count or erase what a person left in the open network: the person, or a coordinator there.
create function app.may_leave_for(leaving uuid) returns boolean
  language sql stable security definer set search_path = public, pg_temp as $$
  select (leaving = app.person_id() or app.member_role() = 'coordinator')
    and exists (select 1 from public.membership m
      where m.network_id = app.network_id() and m.person_id = leaving and m.voided_at is null and m.erased_at is null)
$$;

-- What a person recorded in the open network, whichever sites they still belong to: rows of one table, or their changes.
create function app.recorded_by(leaving uuid, of_table text) returns setof jsonb
  language plpgsql stable security definer set search_path = public, pg_temp as $$
begin
  if not app.may_leave_for(leaving) then
    return;
  end if;
  if of_table = 'history' then
    return query select jsonb_build_object('at', h.at, 'table', h.table_name, 'record_id', h.record_id, 'action', h.action,
        'new_values', h.new_values, 'reason', h.reason)
      from public.history h where h.network_id = app.network_id() and h.person_id = leaving order by h.at, h.id;
  elsif of_table not in ('api_token', 'invitation', 'report_link') and exists (select 1 from pg_attribute a
      where a.attrelid = to_regclass(format('public.%I', of_table)) and a.attname = 'created_by_id' and not a.attisdropped
        and has_table_privilege(a.attrelid, 'select')) then
    return query execute format('select to_jsonb(t) from public.%I t where t.network_id = $1 and t.created_by_id = $2 order by t.id', of_table)
      using app.network_id(), leaving;
  end if;
end $$;

-- How often the person's name or address stands in words that people wrote: told before they leave, since it stays.
create function app.mentions_of(leaving uuid) returns table (table_name text, mentions bigint)
  language plpgsql stable security definer set search_path = public, pg_temp as $$
declare t record; wanted text; mail text; found bigint;
begin
  if not app.may_leave_for(leaving) then
    return;
  end if;
  select c.name, c.email into wanted, mail from public.person_contact c where c.person_id = leaving;
  if wanted is null then
    return;
  end if;
  for t in
    select c.relname, string_agg(format('coalesce(r.%I::text, '''')', a.attname), ' || '' '' || ' order by a.attnum) as words
    from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped
    join pg_type y on y.oid = a.atttypid
    where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and y.typname in ('text', 'jsonb', '_text')
      and has_table_privilege(c.oid, 'select')
      and c.relname not in ('session', 'invitation', 'api_token', 'intake_row', 'intake_file', 'fitted_result')
      and exists (select 1 from pg_attribute n where n.attrelid = c.oid and n.attname = 'network_id')
    group by c.relname order by c.relname
  loop
    execute format('select count(*) from public.%I r where r.network_id = $1 and (strpos(lower(%s), lower($2)) > 0 or strpos(lower(%s), lower($3)) > 0)',
      t.relname, t.words, t.words) into found using app.network_id(), wanted, mail;
    if found > 0 then
      table_name := t.relname;
      mentions := found;
      return next;
    end if;
  end loop;
end $$;

grant delete on public.person_contact, public.account, public.session to pinset_definer;
do $$ begin
  if to_regclass('public.intake_row') is not null then
    grant select, update on public.intake_row, public.intake_content to pinset_definer;
    grant select on public.intake_file to pinset_definer;
  end if;
end $$;

-- Erases a person in the open network, and altogether once no network is left to them: 'left' or 'gone'. Null for whoever is
-- not there or not the actor's to erase. The records keep the id of the person, which leads to nobody any more.
create function app.erase_person(leaving uuid) returns text
  language plpgsql security definer set search_path = public, pg_temp as $$
declare wanted text; mail text; here uuid := app.network_id(); last_one boolean;
begin
  select c.name, c.email into wanted, mail from public.person_contact c where c.person_id = leaving for update;
  if here is not null then
    if not app.may_leave_for(leaving) then
      return null;
    end if;
    update public.membership m set ended_at = coalesce(m.ended_at, now()), erased_at = now()
      where m.network_id = here and m.person_id = leaving;
    update public.membership_site s set ended_at = now() from public.membership m
      where m.network_id = here and m.person_id = leaving and s.network_id = here and s.membership_id = m.id and s.ended_at is null;
    update public.digest_choice d set wanted = false where d.network_id = here and d.person_id = leaving and d.wanted;
    update public.invitation i set for_name = null where i.network_id = here and i.for_name is not null
      and (i.accepted_by_id = leaving or lower(trim(i.for_name)) in (lower(wanted), lower(mail)));
    delete from public.session s where s.person_id = leaving and s.network_id = here;
    if to_regclass('public.api_token') is not null then
      update public.api_token t set name = 'erased', voided_at = coalesce(t.voided_at, now()), void_reason = coalesce(t.void_reason, 'The person left.')
        where t.network_id = here and t.person_id = leaving;
      update public.history h set old_values = h.old_values - 'name', new_values = h.new_values - 'name'
        where h.network_id = here and h.table_name = 'api_token'
          and h.record_id in (select t.id from public.api_token t where t.network_id = here and t.person_id = leaving);
    end if;
    -- A sheet of people that was taken in names them in its own words: the cells go, the sheet as it came goes with them.
    if to_regclass('public.intake_row') is not null then
      update public.intake_content k set content = ''::bytea from public.intake_file f
        where f.network_id = here and f.kind = 'people' and k.network_id = f.network_id and k.id = f.id;
      update public.intake_row r set
          cells = array(select case when strpos(lower(c), lower(wanted)) > 0 or strpos(lower(c), lower(mail)) > 0 then '' else c end
            from unnest(r.cells) with ordinality u(c, i) order by i),
          mended = case when r.mended is null then null else '{}'::jsonb end, problems = '[]'::jsonb
        where r.network_id = here and (strpos(lower(r.cells::text || coalesce(r.mended::text, '') || r.problems::text), lower(wanted)) > 0
          or strpos(lower(r.cells::text || coalesce(r.mended::text, '') || r.problems::text), lower(mail)) > 0);
    end if;
  elsif leaving is distinct from app.person_id() then
    return null;
  end if;
  last_one := not exists (select 1 from public.membership m
    where m.person_id = leaving and m.erased_at is null and m.ended_at is null and m.voided_at is null);
  if not last_one then
    return 'left';
  end if;
  delete from public.session s where s.person_id = leaving;
  delete from public.account a where a.person_id = leaving;
  delete from public.person_contact c where c.person_id = leaving;
  update public.person p set disabled_at = coalesce(p.disabled_at, now()), region = 'en-US' where p.id = leaving;
  update public.membership m set erased_at = now() where m.person_id = leaving and m.erased_at is null;
  return 'gone';
end $$;

do $$
declare f regprocedure;
begin
  for f in select p.oid::regprocedure from pg_proc p join pg_namespace n on n.oid = p.pronamespace
    where n.nspname = 'app' and p.proname in ('knows_person', 'may_leave_for', 'recorded_by', 'mentions_of', 'erase_person')
  loop
    execute format('alter function %s owner to pinset_definer', f);
    execute format('revoke execute on function %s from public', f);
    execute format('grant execute on function %s to pinset_app, pinset_definer', f);
  end loop;
end $$;
