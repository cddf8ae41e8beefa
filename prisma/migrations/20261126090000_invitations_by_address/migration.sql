-- An invitation knows the address of whoever it is for, so that a list of people that is brought in twice invites nobody
-- twice; a list of people is for coordinators alone; and whoever goes, or is not to be invited after all, leaves no row in it.

alter table public.invitation add column "for_email" TEXT;
alter table public.invitation add constraint invitation_for_email check (for_email = lower(trim(for_email)) and for_email <> '');
create unique index invitation_one_open_by_email on public.invitation (network_id, for_email)
  where for_email is not null and accepted_at is null and voided_at is null;

-- A tokens' hash is a secret even in history; who an invitation is for stands where it can be erased.
create or replace function app.write_invitation_history() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
begin
  insert into public.history (network_id, person_id, table_name, record_id, action, new_values, reason)
  values (new.network_id, app.person_id(), 'invitation', new.id,
    (case tg_op when 'INSERT' then 'created' else 'changed' end)::public.history_action,
    jsonb_strip_nulls(to_jsonb(new) - 'token_hash' - 'for_name' - 'for_email'), nullif(current_setting('app.reason', true), ''));
  return null;
end $$;

-- Tables of people hold names and addresses: a member sees none, not even of their own site.
drop policy member_own on public.intake_file;
create policy member_own on public.intake_file for all to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'member' and kind <> 'people'
    and (created_by_id = (select app.person_id()) or site_id = any ((select app.site_ids())::uuid[])))
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'member' and kind <> 'people'
    and (site_id is null or site_id = any ((select app.site_ids())::uuid[])));

-- Empties the rows of tables of people that are about somebody: those that became one of these invitations, and those that
-- say one of these words (names or addresses) in a cell. The whole row is theirs, and so the upload keeps no copy of it.
create function app.erase_people_rows(here uuid, invitations uuid[], words text[]) returns void
  language plpgsql security definer set search_path = public, pg_temp as $$
declare files uuid[];
begin
  with emptied as (
    update public.intake_row r set cells = '{}', mended = null, problems = '[]',
        state = case when r.state = 'added' then r.state else 'left_out' end
      from public.intake_file f
      where f.network_id = here and f.kind = 'people' and r.network_id = here and r.file_id = f.id and (
        r.record_ids && invitations
        or exists (select 1 from unnest(r.cells) c where lower(trim(c)) = any (words))
        or exists (select 1 from jsonb_each_text(coalesce(r.mended, '{}')) m where lower(trim(m.value)) = any (words)))
      returning r.file_id)
  select array_agg(distinct file_id) into files from emptied;
  update public.intake_content k set content = ''::bytea where k.network_id = here and k.id = any (files);
end $$;

-- Takes what names a person out of one network: of choices, invitations, tokens and tables.
create or replace function app.erase_in_network(here uuid, leaving uuid, wanted text, mail text) returns void
  language plpgsql security definer set search_path = public, pg_temp as $$
declare invitations uuid[];
begin
  update public.digest_choice d set wanted = false where d.network_id = here and d.person_id = leaving and d.wanted;
  invitations := array(select i.id from public.invitation i where i.network_id = here
    and (i.accepted_by_id = leaving or i.for_email = lower(trim(mail))
      or lower(trim(i.for_name)) in (lower(erase_in_network.wanted), lower(mail))));
  perform app.erase_people_rows(here, invitations,
    array_remove(array[nullif(lower(trim(erase_in_network.wanted)), ''), nullif(lower(trim(mail)), '')], null));
  update public.invitation i set for_name = null, for_email = null where i.network_id = here and i.id = any (invitations)
    and (i.for_name is not null or i.for_email is not null);
  update public.api_token t set name = 'erased', voided_at = coalesce(t.voided_at, now()), void_reason = coalesce(t.void_reason, 'The person left.')
    where t.network_id = here and t.person_id = leaving;
  update public.history h set old_values = h.old_values - 'name', new_values = h.new_values - 'name'
    where h.network_id = here and h.table_name = 'api_token'
      and h.record_id in (select t.id from public.api_token t where t.network_id = here and t.person_id = leaving);
  perform app.erase_from_tables(here, wanted, mail);
end $$;

-- Takes an open invitation back, with the name and address of somebody who never joined. False where there is none.
create function app.withdraw_invitation(wanted uuid) returns boolean
  language plpgsql security definer set search_path = public, pg_temp as $$
declare here uuid := app.network_id(); mail text;
begin
  if app.member_role() is distinct from 'coordinator' then
    return false;
  end if;
  select i.for_email into mail from public.invitation i
    where i.network_id = here and i.id = wanted and i.accepted_at is null and i.voided_at is null for update;
  if not found then
    return false;
  end if;
  update public.invitation i set voided_at = now(), void_reason = 'withdrawn', for_name = null, for_email = null
    where i.network_id = here and i.id = wanted;
  perform app.erase_people_rows(here, array[wanted], array_remove(array[mail], null));
  return true;
end $$;

alter function app.erase_people_rows(uuid, uuid[], text[]) owner to pinset_definer;
alter function app.withdraw_invitation(uuid) owner to pinset_definer;
revoke execute on function app.erase_people_rows(uuid, uuid[], text[]), app.withdraw_invitation(uuid) from public;
grant execute on function app.withdraw_invitation(uuid) to pinset_app;
