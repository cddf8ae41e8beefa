-- Which sites a write moved, beside how many writes there were: a reader who remembers the sums of each site reads anew only
-- those of sites written since. Kept by the same trigger, in the same transaction, under the same lock as the network's
-- version: a site's version is the network's at its latest write.
create table public.outcome_site_version (
    "network_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "version" BIGINT NOT NULL,

    CONSTRAINT "outcome_site_version_pkey" PRIMARY KEY ("network_id","site_id")
);
alter table public.outcome_site_version add constraint "outcome_site_version_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;

grant select on public.outcome_site_version to pinset_app;
grant select, insert, update, delete on public.outcome_site_version to pinset_definer;
alter table public.outcome_site_version enable row level security;
alter table public.outcome_site_version force row level security;
create policy coordinator_read on public.outcome_site_version for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');

create or replace function app.count_outcome_version() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
begin
  insert into outcome_version as v (network_id, version) select distinct network_id, 1::bigint from changed_rows
  on conflict (network_id) do update set version = v.version + 1;
  insert into outcome_site_version as s (network_id, site_id, version)
  select distinct c.network_id, c.site_id, v.version from changed_rows c join outcome_version v on v.network_id = c.network_id
  on conflict (network_id, site_id) do update set version = excluded.version;
  if tg_op = 'UPDATE' then
    -- The site that a batch was at before.
    insert into outcome_site_version as s (network_id, site_id, version)
    select distinct c.network_id, c.site_id, v.version from old_rows c join outcome_version v on v.network_id = c.network_id
    on conflict (network_id, site_id) do update set version = excluded.version;
  end if;
  return null;
end $$;
drop trigger outcome_version_update on public.batch_outcome;
create trigger outcome_version_update after update on public.batch_outcome
  referencing new table as changed_rows old table as old_rows for each statement execute function app.count_outcome_version();

-- For the operator, beside what differs of the totals: a site that has batches and no version, or one that is ahead of its
-- network, would be remembered as it was.
create function app.wrong_site_versions(of_network uuid) returns table (what text, place text, kept jsonb, records jsonb)
  language sql stable security definer set search_path = public, pg_temp as $$
  select 'site version', o.site_id::text, to_jsonb(s), to_jsonb(v)
  from (select distinct site_id from batch_outcome where network_id = of_network) o
  left join outcome_site_version s on s.network_id = of_network and s.site_id = o.site_id
  left join outcome_version v on v.network_id = of_network
  where s.version is null or v.version is null or s.version > v.version
$$;

create function app.begin_site_versions() returns void
  language sql volatile security definer set search_path = public, pg_temp as $$
  insert into outcome_version (network_id, version) select distinct network_id, 1::bigint from batch_outcome on conflict do nothing;
  insert into outcome_site_version (network_id, site_id, version)
  select distinct o.network_id, o.site_id, v.version from batch_outcome o join outcome_version v on v.network_id = o.network_id;
$$;

alter function app.wrong_site_versions(uuid) owner to pinset_definer;
alter function app.begin_site_versions() owner to pinset_definer;
revoke execute on function app.wrong_site_versions(uuid), app.begin_site_versions() from public;
do $$ begin
  execute format('grant execute on function app.wrong_site_versions(uuid), app.begin_site_versions() to %I', current_user);
end $$;

-- What is already kept.
select app.begin_site_versions();
drop function app.begin_site_versions();
