-- Counts the writes that moved what is kept of batches, so that sums read once can be used again until the next. It moves in
-- the transaction of the write, under the network's lock that is held to its end: who sees a version sees what it counts. A
-- network without a row has not been written since.
create table public.outcome_version (
    "network_id" UUID NOT NULL,
    "version" BIGINT NOT NULL,

    CONSTRAINT "outcome_version_pkey" PRIMARY KEY ("network_id")
);
alter table public.outcome_version add constraint "outcome_version_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;

grant select on public.outcome_version to pinset_app;
grant select, insert, update, delete on public.outcome_version to pinset_definer;
alter table public.outcome_version enable row level security;
alter table public.outcome_version force row level security;
create policy coordinator_read on public.outcome_version for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');

create function app.count_outcome_version() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
begin
  insert into outcome_version as v (network_id, version) select distinct network_id, 1::bigint from changed_rows
  on conflict (network_id) do update set version = v.version + 1;
  return null;
end $$;
alter function app.count_outcome_version() owner to pinset_definer;
revoke execute on function app.count_outcome_version() from public;

create trigger outcome_version_insert after insert on public.batch_outcome
  referencing new table as changed_rows for each statement execute function app.count_outcome_version();
create trigger outcome_version_update after update on public.batch_outcome
  referencing new table as changed_rows for each statement execute function app.count_outcome_version();
create trigger outcome_version_delete after delete on public.batch_outcome
  referencing old table as changed_rows for each statement execute function app.count_outcome_version();
