-- A batch names who started it. Members may choose among those who work at the same site, by id and name, without
-- reading the tables of people and memberships; the coordinator may name anyone of the network.
create function app.site_colleagues(wanted_site uuid) returns table (person_id uuid, person_name text)
  language sql stable security definer set search_path = public, pg_temp as $$
  select m.person_id, c.name
  from public.membership m
  join public.person_contact c on c.person_id = m.person_id
  where m.network_id = app.network_id() and m.ended_at is null and m.voided_at is null
    and (app.member_role() = 'coordinator' or wanted_site = any (app.site_ids()))
    and (m.role = 'coordinator' or exists (
      select 1 from public.membership_site s
      where s.network_id = m.network_id and s.membership_id = m.id and s.site_id = wanted_site and s.ended_at is null))
  order by c.name, m.person_id
$$;
alter function app.site_colleagues(uuid) owner to pinset_definer;
revoke execute on function app.site_colleagues(uuid) from public;
grant execute on function app.site_colleagues(uuid) to pinset_app, pinset_definer;
