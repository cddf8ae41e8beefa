-- Where the search for a model's variances stood at the last fit of the same question, so that the next one starts there.
alter table public.fitted_result add column "starts" JSONB;

-- Which server process is fitting models of a network. One row a network; whoever holds it says so again and again, and who
-- has not for a while is taken to have ended. Nothing of the records is in it, so it has no history.
create table public.fit_turn (
    "network_id" UUID NOT NULL,
    "holder" UUID NOT NULL,
    "seen_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "fit_turn_pkey" PRIMARY KEY ("network_id")
);
alter table public.fit_turn add constraint "fit_turn_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;

grant select, insert, update on public.fit_turn to pinset_app;
alter table public.fit_turn enable row level security;
alter table public.fit_turn force row level security;
create policy coordinator_all on public.fit_turn for all to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');
