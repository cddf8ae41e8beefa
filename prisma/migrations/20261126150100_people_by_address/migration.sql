-- People are told apart by address: somebody else of the same name keeps invitation and rows; whoever joined with another address
-- than they were invited by is erased by both.
create or replace function app.erase_in_network(here uuid, leaving uuid, wanted text, mail text) returns void
  language plpgsql security definer set search_path = public, pg_temp as $$
declare
  invitations uuid[];
  addresses text[] := array(select lower(trim(mail)) where trim(mail) <> '' union
    select i.for_email from public.invitation i where i.network_id = here and i.accepted_by_id = leaving and i.for_email is not null);
begin
  update public.digest_choice d set wanted = false where d.network_id = here and d.person_id = leaving and d.wanted;
  invitations := array(select i.id from public.invitation i where i.network_id = here
    and (i.accepted_by_id = leaving or i.for_email = any (addresses)
      or (i.for_email is null and i.accepted_by_id is null
        and lower(trim(i.for_name)) in (lower(erase_in_network.wanted), lower(mail)))));
  perform app.erase_people_rows(here, invitations, addresses);
  update public.invitation i set for_name = null, for_email = null where i.network_id = here and i.id = any (invitations)
    and (i.for_name is not null or i.for_email is not null);
  update public.api_token t set name = 'erased', voided_at = coalesce(t.voided_at, now()), void_reason = coalesce(t.void_reason, 'The person left.')
    where t.network_id = here and t.person_id = leaving;
  update public.history h set old_values = h.old_values - 'name', new_values = h.new_values - 'name'
    where h.network_id = here and h.table_name = 'api_token'
      and h.record_id in (select t.id from public.api_token t where t.network_id = here and t.person_id = leaving);
  perform app.erase_from_tables(here, wanted, mail);
end $$;

-- History is read by the members of a site and never erased: of a table of people it keeps nothing that may name one.
drop trigger write_history on public.intake_file;
create trigger write_history after insert or update of site_id, kind, layout, choices, confirmed, state
  on public.intake_file for each row when (new.kind <> 'people') execute function app.write_history();
