-- Erasing a person touches of other people's tables only what is the person's name or address and nothing else, leaves no
-- copy of it in the bytes of the upload, and reaches every network the person was ever in once they are gone altogether.

grant update (file_name, layout, choices) on public.intake_file to pinset_definer;

-- Takes a name out of the tables that wait to be added. A cell counts where it is the name or the address as a whole: a
-- sentence that names them stays, as words that people wrote do. Rows not added yet are read anew before they are added.
create function app.erase_from_tables(here uuid, wanted text, mail text) returns void
  language plpgsql security definer set search_path = public, pg_temp as $$
declare
  names text[] := array_remove(array[nullif(lower(trim(wanted)), ''), nullif(lower(trim(mail)), '')], null);
  -- As a choice for a text that was not found keeps it: capitals without accents, signs and blanks.
  codes text[] := array(select upper(regexp_replace(regexp_replace(normalize(n, NFD), '[\u0300-\u036f]', '', 'g'), '[^[:alnum:]]+', '', 'g')) from unnest(names) n);
  files uuid[];
begin
  files := array(
    select r.file_id from public.intake_row r where r.network_id = here and (
      exists (select 1 from unnest(r.cells) c where lower(trim(c)) = any (names))
      or exists (select 1 from jsonb_each_text(coalesce(r.mended, '{}')) m where lower(trim(m.value)) = any (names)))
    union
    select f.id from public.intake_file f where f.network_id = here and exists (select 1
      from jsonb_array_elements_text((f.layout -> 'headers') || (f.layout -> 'sheets')) h where lower(trim(h)) = any (names)));
  update public.intake_row r set
      cells = array(select case when lower(trim(c)) = any (names) then '' else c end from unnest(r.cells) with ordinality u(c, i) order by i),
      mended = (select jsonb_object_agg(m.key, case when lower(trim(m.value)) = any (names) then '' else m.value end) from jsonb_each_text(r.mended) m),
      problems = coalesce((select jsonb_agg(p order by i) from jsonb_array_elements(r.problems) with ordinality u(p, i)
        where lower(trim(p #>> '{values,text}')) = any (names) is not true), '[]'),
      state = case when r.state in ('new', 'there', 'needs') then 'unread' else r.state end
    where r.network_id = here and r.file_id = any (files) and (
      exists (select 1 from unnest(r.cells) c where lower(trim(c)) = any (names))
      or exists (select 1 from jsonb_each_text(coalesce(r.mended, '{}')) m where lower(trim(m.value)) = any (names)));
  update public.intake_file f set
      layout = f.layout || jsonb_build_object(
        'headers', (select coalesce(jsonb_agg(case when lower(trim(h)) = any (names) then '' else h end order by i), '[]')
          from jsonb_array_elements_text(f.layout -> 'headers') with ordinality u(h, i)),
        'sheets', (select coalesce(jsonb_agg(case when lower(trim(h)) = any (names) then '' else h end order by i), '[]')
          from jsonb_array_elements_text(f.layout -> 'sheets') with ordinality u(h, i))),
      choices = (select coalesce(jsonb_object_agg(c.key, c.value), '{}') from jsonb_each(f.choices) c
        where split_part(c.key, ' ', 2) <> all (codes))
    where f.network_id = here and f.id = any (files);
  update public.history h set
      old_values = h.old_values - '{layout,choices}'::text[], new_values = h.new_values - '{layout,choices}'::text[]
    where h.network_id = here and h.table_name = 'intake_file' and h.record_id = any (files)
      and exists (select 1 from unnest(names || codes) n
        where strpos(lower(coalesce(h.old_values::text, '') || coalesce(h.new_values::text, '')), lower(n)) > 0);
  update public.intake_content k set content = ''::bytea where k.network_id = here and k.id = any (files);
  -- A file is named after somebody where the name stands in it between other words, however they are joined.
  files := array(select f.id from public.intake_file f where f.network_id = here and exists (select 1 from unnest(names) n
    where strpos(' ' || regexp_replace(lower(f.file_name), '[^[:alnum:]]+', ' ', 'g') || ' ',
      ' ' || trim(regexp_replace(n, '[^[:alnum:]]+', ' ', 'g')) || ' ') > 0));
  update public.intake_file f set file_name = '-' where f.network_id = here and f.id = any (files);
  update public.history h set old_values = h.old_values - 'file_name', new_values = h.new_values - 'file_name'
    where h.network_id = here and h.table_name = 'intake_file' and h.record_id = any (files);
end $$;

-- Takes what names a person out of one network: of choices, invitations, tokens and tables.
create function app.erase_in_network(here uuid, leaving uuid, wanted text, mail text) returns void
  language plpgsql security definer set search_path = public, pg_temp as $$
begin
  update public.digest_choice d set wanted = false where d.network_id = here and d.person_id = leaving and d.wanted;
  update public.invitation i set for_name = null where i.network_id = here and i.for_name is not null
    and (i.accepted_by_id = leaving or lower(trim(i.for_name)) in (lower(erase_in_network.wanted), lower(mail)));
  update public.api_token t set name = 'erased', voided_at = coalesce(t.voided_at, now()), void_reason = coalesce(t.void_reason, 'The person left.')
    where t.network_id = here and t.person_id = leaving;
  update public.history h set old_values = h.old_values - 'name', new_values = h.new_values - 'name'
    where h.network_id = here and h.table_name = 'api_token'
      and h.record_id in (select t.id from public.api_token t where t.network_id = here and t.person_id = leaving);
  perform app.erase_from_tables(here, wanted, mail);
end $$;

-- Erases a person in the open network, and altogether once no network is left to them: 'left' or 'gone'. Null for whoever is
-- not there or not the actor's to erase, and where no network is open though one is left to the person: nothing is done then.
create or replace function app.erase_person(leaving uuid) returns text
  language plpgsql security definer set search_path = public, pg_temp as $$
declare wanted text; mail text; here uuid := app.network_id(); last_one boolean; other uuid;
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
    delete from public.session s where s.person_id = leaving and s.network_id = here;
    perform app.erase_in_network(here, leaving, wanted, mail);
  elsif leaving is distinct from app.person_id() then
    return null;
  end if;
  last_one := not exists (select 1 from public.membership m
    where m.person_id = leaving and m.erased_at is null and m.ended_at is null and m.voided_at is null);
  if not last_one then
    return case when here is null then null else 'left' end;
  end if;
  for other in select m.network_id from public.membership m where m.person_id = leaving and m.network_id is distinct from here loop
    perform app.erase_in_network(other, leaving, wanted, mail);
  end loop;
  delete from public.session s where s.person_id = leaving;
  delete from public.account a where a.person_id = leaving;
  delete from public.person_contact c where c.person_id = leaving;
  update public.person p set disabled_at = coalesce(p.disabled_at, now()), region = 'en-US' where p.id = leaving;
  update public.membership m set erased_at = now() where m.person_id = leaving and m.erased_at is null;
  return 'gone';
end $$;

alter function app.erase_from_tables(uuid, text, text) owner to pinset_definer;
alter function app.erase_in_network(uuid, uuid, text, text) owner to pinset_definer;
revoke execute on function app.erase_from_tables(uuid, text, text), app.erase_in_network(uuid, uuid, text, text) from public;
