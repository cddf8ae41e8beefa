-- A coordinator of the open network, by id, for its members and for nobody else: what the server works out for a member of a
-- site needs the records of all sites, which it reads as that coordinator and never hands on. Null where there is none.
create function app.coordinator_here() returns uuid
  language sql stable security definer set search_path = public, pg_temp as $$
  select m.person_id from public.membership m
  join public.person p on p.id = m.person_id and p.disabled_at is null
  where m.network_id = app.network_id() and app.member_role() = 'member' and app.site_scope() is null
    and m.role = 'coordinator' and m.ended_at is null and m.voided_at is null
    and exists (select 1 from public.person_contact k where k.person_id = m.person_id)
  order by m.person_id limit 1
$$;
alter function app.coordinator_here() owner to pinset_definer;
revoke execute on function app.coordinator_here() from public;
grant execute on function app.coordinator_here() to pinset_app, pinset_definer;
