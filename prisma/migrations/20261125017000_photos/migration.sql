-- Pictures of a batch or of a finding. What a picture is about stands in photo; its bytes in photo_content (written once,
-- and not copied into the history) or in a store outside, by one setting of the server.

create table public.photo (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "site_id" UUID NOT NULL,
    "batch_id" UUID NOT NULL,
    "finding_id" UUID,
    "caption" TEXT,
    "width_px" INTEGER NOT NULL,
    "height_px" INTEGER NOT NULL,
    "stored_bytes" INTEGER NOT NULL,
    "outside" BOOLEAN NOT NULL DEFAULT false,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "photo_pkey" PRIMARY KEY ("network_id","id")
);
create index "photo_network_id_batch_id_idx" on public.photo("network_id", "batch_id");
create unique index "photo_network_id_site_id_id_key" on public.photo("network_id", "site_id", "id");
alter table public.photo add constraint "photo_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.photo add constraint "photo_network_id_site_id_batch_id_fkey" foreign key ("network_id", "site_id", "batch_id") references public.batch("network_id", "site_id", "id") on delete restrict on update cascade;
alter table public.photo add constraint "photo_network_id_site_id_finding_id_fkey" foreign key ("network_id", "site_id", "finding_id") references public.finding("network_id", "site_id", "id") on delete restrict on update cascade;
alter table public.photo
  add constraint photo_size check (width_px between 1 and 4000 and height_px between 1 and 4000 and stored_bytes > 0),
  add constraint photo_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

create table public.photo_content (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "image" BYTEA NOT NULL,
    "thumbnail" BYTEA NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "photo_content_pkey" PRIMARY KEY ("network_id","id")
);
create unique index "photo_content_network_id_site_id_id_key" on public.photo_content("network_id", "site_id", "id");
alter table public.photo_content add constraint "photo_content_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.photo_content add constraint "photo_content_network_id_site_id_id_fkey" foreign key ("network_id", "site_id", "id") references public.photo("network_id", "site_id", "id") on delete restrict on update cascade;
alter table public.photo_content alter column image set storage external, alter column thumbnail set storage external;

create function app.write_photo_content_history() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
begin
  insert into public.history (network_id, person_id, site_id, table_name, record_id, action, new_values, origin)
  values (new.network_id, app.person_id(), new.site_id, 'photo_content', new.id,
    (case tg_op when 'INSERT' then 'created' else 'changed' end)::public.history_action,
    jsonb_build_object('image_sha256', encode(sha256(new.image), 'hex'), 'bytes', octet_length(new.image)),
    nullif(current_setting('app.origin', true), ''));
  return null;
end $$;
alter function app.write_photo_content_history() owner to pinset_definer;
revoke execute on function app.write_photo_content_history() from public;

grant select, insert, update on public.photo to pinset_app;
grant select, insert on public.photo_content to pinset_app;
grant select, insert, update on public.photo, public.photo_content to pinset_definer;
create trigger keep_identity before update on public.photo for each row execute function app.keep_identity();
create trigger write_history after insert or update on public.photo for each row execute function app.write_history();
create trigger write_history after insert or update on public.photo_content for each row execute function app.write_photo_content_history();

do $$
declare t text;
begin
  foreach t in array array['photo', 'photo_content'] loop
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
