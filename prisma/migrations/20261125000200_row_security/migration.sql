-- Who may see and write which row. The application's role (pinset_app) owns nothing and cannot bypass these
-- policies; pinset_definer owns the functions that must look past them and can do nothing else.

create schema app authorization current_user;
grant usage on schema app to pinset_app, pinset_definer;
grant create on schema app to pinset_definer;
grant usage on schema public to pinset_app, pinset_definer;
grant select, insert, update on all tables in schema public to pinset_definer;

-- The settings are transaction-local. After a transaction they read '' and not null, hence nullif.
create function app.network_id() returns uuid language sql stable as
  $$ select nullif(current_setting('app.network_id', true), '')::uuid $$;
create function app.person_id() returns uuid language sql stable as
  $$ select nullif(current_setting('app.person_id', true), '')::uuid $$;

-- The role and the sites come from the membership rows, never from what the caller claims.
create function app.member_role() returns public.membership_role
  language sql stable security definer set search_path = public, pg_temp as $$
  select m.role from public.membership m join public.person p on p.id = m.person_id
  where m.network_id = app.network_id() and m.person_id = app.person_id()
    and m.ended_at is null and m.voided_at is null and p.disabled_at is null
$$;
create function app.site_ids() returns uuid[]
  language sql stable security definer set search_path = public, pg_temp as $$
  select coalesce(array_agg(s.site_id), '{}') from public.membership m
  join public.person p on p.id = m.person_id
  join public.membership_site s on s.network_id = m.network_id and s.membership_id = m.id
  where m.network_id = app.network_id() and m.person_id = app.person_id() and m.role = 'member'
    and m.ended_at is null and m.voided_at is null and s.ended_at is null and p.disabled_at is null
$$;
create function app.shares_network_with(other uuid) returns boolean
  language sql stable security definer set search_path = public, pg_temp as $$
  select exists (select 1 from public.membership m where m.network_id = app.network_id() and m.person_id = other)
$$;
-- Members may know a colleague by name without reading the table of addresses.
create function app.colleague_name(other uuid) returns text
  language sql stable security definer set search_path = public, pg_temp as $$
  select c.name from public.person_contact c
  where c.person_id = other and app.member_role() in ('coordinator', 'member')
    and exists (select 1 from public.membership m where m.network_id = app.network_id() and m.person_id = other)
$$;
alter function app.member_role() owner to pinset_definer;
alter function app.site_ids() owner to pinset_definer;
alter function app.shares_network_with(uuid) owner to pinset_definer;
alter function app.colleague_name(uuid) owner to pinset_definer;

-- Everything is readable only through policies; nothing can be deleted or truncated by the application.
grant select, insert, update on all tables in schema public to pinset_app;
revoke all on public._prisma_migrations from pinset_app;
grant select on public._prisma_migrations to pinset_app;
revoke insert, update on public.history, public.setup_link from pinset_app;
revoke select on public.setup_link from pinset_app;
revoke insert on public.network from pinset_app;

-- Global tables.
alter table public.person enable row level security;
alter table public.person force row level security;
create policy own_person on public.person for all to pinset_app
  using (id = (select app.person_id())) with check (id = (select app.person_id()) and disabled_at is null);
create policy network_person on public.person for select to pinset_app
  using ((select app.member_role()) = 'coordinator' and app.shares_network_with(id));

alter table public.person_contact enable row level security;
alter table public.person_contact force row level security;
create policy own_contact on public.person_contact for all to pinset_app
  using (person_id = (select app.person_id())) with check (person_id = (select app.person_id()));
create policy network_contact on public.person_contact for select to pinset_app
  using ((select app.member_role()) = 'coordinator' and app.shares_network_with(person_id));

alter table public.account enable row level security;
alter table public.account force row level security;
create policy own_account on public.account for all to pinset_app
  using (person_id = (select app.person_id())) with check (person_id = (select app.person_id()));

alter table public.session enable row level security;
alter table public.session force row level security;
create policy own_session on public.session for all to pinset_app
  using (person_id = (select app.person_id())) with check (person_id = (select app.person_id()));

alter table public.setup_link enable row level security;
alter table public.setup_link force row level security;

-- The network itself, memberships, invitations.
alter table public.network enable row level security;
alter table public.network force row level security;
create policy read_network on public.network for select to pinset_app
  using (id = (select app.network_id()) and (select app.member_role()) is not null);
create policy change_network on public.network for update to pinset_app
  using (id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
  with check (id = (select app.network_id()));

alter table public.membership enable row level security;
alter table public.membership force row level security;
create policy own_membership on public.membership for select to pinset_app
  using (person_id = (select app.person_id()));
create policy network_membership on public.membership for all to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');

alter table public.membership_site enable row level security;
alter table public.membership_site force row level security;
create policy network_membership_site on public.membership_site for all to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');
create policy own_membership_site on public.membership_site for select to pinset_app
  using (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]));

alter table public.invitation enable row level security;
alter table public.invitation force row level security;
create policy network_invitation on public.invitation for all to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');

-- Sites: all of them for the coordinator, a member's own for the member.
alter table public.site enable row level security;
alter table public.site force row level security;
create policy coordinator_site on public.site for all to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');
create policy member_site on public.site for select to pinset_app
  using (network_id = (select app.network_id()) and id = any ((select app.site_ids())::uuid[]));

-- Tables of the network that members read and the coordinator keeps.
do $$
declare t text;
begin
  foreach t in array array['species', 'assessment_window', 'material', 'method', 'material_moisture'] loop
    execute format('alter table public.%I enable row level security', t);
    execute format('alter table public.%I force row level security', t);
    execute format($p$create policy coordinator_all on public.%I for all to pinset_app
      using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
      with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')$p$, t);
    execute format($p$create policy member_read on public.%I for select to pinset_app
      using (network_id = (select app.network_id()) and (select app.member_role()) = 'member')$p$, t);
  end loop;
end $$;

-- Lots belong to the network: every member reads and adds them; only the coordinator or whoever added one mends it.
do $$
declare t text;
begin
  foreach t in array array['substrate_lot', 'spawn_lot'] loop
    execute format('alter table public.%I enable row level security', t);
    execute format('alter table public.%I force row level security', t);
    execute format($p$create policy coordinator_all on public.%I for all to pinset_app
      using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
      with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')$p$, t);
    execute format($p$create policy member_read on public.%I for select to pinset_app
      using (network_id = (select app.network_id()) and (select app.member_role()) = 'member')$p$, t);
    execute format($p$create policy member_add on public.%I for insert to pinset_app
      with check (network_id = (select app.network_id()) and (select app.member_role()) = 'member'
        and created_by_id = (select app.person_id()))$p$, t);
    execute format($p$create policy member_mend on public.%I for update to pinset_app
      using (network_id = (select app.network_id()) and (select app.member_role()) = 'member'
        and created_by_id = (select app.person_id()))
      with check (network_id = (select app.network_id()) and created_by_id = (select app.person_id()))$p$, t);
  end loop;
end $$;

-- Rows of a site.
do $$
declare t text;
begin
  foreach t in array array['substrate_receipt', 'spawn_receipt', 'treatment_run', 'treatment_allocation', 'treatment_reading',
    'batch', 'batch_component', 'spawn_share', 'look', 'finding', 'finding_unit', 'finding_follow_up', 'loss', 'loss_unit',
    'check', 'weighing', 'weighing_line', 'weighing_destination', 'second_life_source'] loop
    execute format('alter table public.%I enable row level security', t);
    execute format('alter table public.%I force row level security', t);
    execute format($p$create policy coordinator_all on public.%I for all to pinset_app
      using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
      with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')$p$, t);
    execute format($p$create policy member_own_sites on public.%I for all to pinset_app
      using (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]))
      with check (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]))$p$, t);
  end loop;
end $$;

-- A run allocated to my site is mine to read and to draw on, though another site made it.
create function app.allocated_to_mine(run uuid) returns boolean
  language sql stable security definer set search_path = public, pg_temp as $$
  select exists (select 1 from public.treatment_allocation a where a.network_id = app.network_id()
    and a.treatment_run_id = run and a.voided_at is null and a.site_id = any (app.site_ids()))
$$;
alter function app.allocated_to_mine(uuid) owner to pinset_definer;
create policy member_allocated_run on public.treatment_run for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'member' and app.allocated_to_mine(id));
create policy member_allocated_reading on public.treatment_reading for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'member' and app.allocated_to_mine(treatment_run_id));

-- Both ends of a second life can read the link.
create policy member_source_site on public.second_life_source for select to pinset_app
  using (network_id = (select app.network_id()) and source_site_id = any ((select app.site_ids())::uuid[]));

-- A report is the only thing a funder reads, and only once it is published.
alter table public.report enable row level security;
alter table public.report force row level security;
create policy coordinator_report on public.report for all to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');
create policy published_report on public.report for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) in ('funder', 'member')
    and published_at is not null and voided_at is null);

alter table public.history enable row level security;
alter table public.history force row level security;
create policy coordinator_history on public.history for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');
create policy member_history on public.history for select to pinset_app
  using (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]));
