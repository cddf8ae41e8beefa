-- What the last fit of the models answered to a question, with the state of the records it was made from. Everything here
-- can be worked out again from the records, so it is overwritten and has no history. A row with a site is the part of the
-- answer that members of that site may read.

create table public.fitted_result (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "question" TEXT NOT NULL,
    "asked" TEXT NOT NULL,
    "site_id" UUID,
    "data_version" TEXT NOT NULL,
    "result" JSONB NOT NULL,
    "fitted_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "fitted_result_pkey" PRIMARY KEY ("network_id","id")
);
alter table public.fitted_result add constraint "fitted_result_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.fitted_result add constraint "fitted_result_network_id_site_id_fkey" foreign key ("network_id", "site_id") references public.site("network_id", "id") on delete restrict on update no action;
create unique index fitted_result_once on public.fitted_result (network_id, question, asked, site_id) nulls not distinct;

grant select, insert, update on public.fitted_result to pinset_app;
alter table public.fitted_result enable row level security;
alter table public.fitted_result force row level security;
create policy coordinator_all on public.fitted_result for all to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');
create policy member_own_sites on public.fitted_result for select to pinset_app
  using (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]));
