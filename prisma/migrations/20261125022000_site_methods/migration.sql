-- Which methods a site can use, where somebody has said so. Without a row a site can use what it has used.

create table public.site_method (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "site_id" UUID NOT NULL,
    "method_id" UUID NOT NULL,
    "available" BOOLEAN NOT NULL,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "site_method_pkey" PRIMARY KEY ("network_id","id")
);
create unique index "site_method_network_id_site_id_method_id_key" on public.site_method("network_id", "site_id", "method_id");
alter table public.site_method add constraint "site_method_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.site_method add constraint "site_method_network_id_site_id_fkey" foreign key ("network_id", "site_id") references public.site("network_id", "id") on delete restrict on update no action;
alter table public.site_method add constraint "site_method_network_id_method_id_fkey" foreign key ("network_id", "method_id") references public.method("network_id", "id") on delete restrict on update no action;

grant select, insert, update on public.site_method to pinset_app, pinset_definer;
create trigger keep_identity before update on public.site_method for each row execute function app.keep_identity();
create trigger write_history after insert or update on public.site_method for each row execute function app.write_history();

alter table public.site_method enable row level security;
alter table public.site_method force row level security;
create policy coordinator_all on public.site_method for all to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');
create policy member_own_sites on public.site_method for all to pinset_app
  using (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]))
  with check (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]));
