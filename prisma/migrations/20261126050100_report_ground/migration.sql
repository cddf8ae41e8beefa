-- What the sums of a report were made of, site by site. Only coordinators read it: a later version is held against it, so
-- that what two versions show tells nothing of a single site by subtraction, and it says where a figure has changed since.
-- It is written once with its report and never changes, so it has no history.
create table public.report_ground (
    "network_id" UUID NOT NULL,
    -- The report's id.
    "id" UUID NOT NULL,
    "ground" JSONB NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "report_ground_pkey" PRIMARY KEY ("network_id","id")
);
alter table public.report_ground add constraint "report_ground_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.report_ground add constraint "report_ground_network_id_id_fkey" foreign key ("network_id", "id") references public.report("network_id", "id") on delete restrict on update no action;

alter table public.report_ground enable row level security;
alter table public.report_ground force row level security;
create policy coordinator_all on public.report_ground for all to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');
grant select, insert on public.report_ground to pinset_app;
