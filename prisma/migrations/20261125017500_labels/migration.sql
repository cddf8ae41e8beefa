-- Labels: each batch has a key by which a printed code finds it, and a network may keep sheets of its own.

-- 60 random bits in letters and digits that survive a change of case. A version 4 UUID has random bits everywhere but
-- in bytes 6 and 8, which are left out.
create function app.label_key() returns text language sql volatile set search_path = pg_catalog as $$
  select string_agg(substr('0123456789abcdefghjkmnpqrstvwxyz', 1 + (get_byte(random.bytes, place.at) & 31), 1), '' order by place.at)
  from (select uuid_send(gen_random_uuid()) as bytes) as random,
    unnest(array[0, 1, 2, 3, 4, 5, 9, 10, 11, 12, 13, 14]) as place(at)
$$;

alter table public.batch add column "label_key" text not null default app.label_key();
alter table public.batch add constraint batch_label_key check (label_key ~ '^[0-9a-hjkmnp-tv-z]{12}$');
create unique index "batch_network_id_label_key_key" on public.batch("network_id", "label_key");

-- A label on a bag in the shed cannot be changed, so the key it carries cannot either.
create function app.keep_label_key() returns trigger language plpgsql as $$
begin
  if new.label_key is distinct from old.label_key then
    raise exception 'the key of a label cannot change' using errcode = 'PB001';
  end if;
  return new;
end $$;
create trigger keep_label_key before update of label_key on public.batch for each row execute function app.keep_label_key();

create table public.label_sheet (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "name" TEXT NOT NULL,
    "page_width_mm" DECIMAL(6,2) NOT NULL,
    "page_height_mm" DECIMAL(6,2) NOT NULL,
    "label_width_mm" DECIMAL(6,2) NOT NULL,
    "label_height_mm" DECIMAL(6,2) NOT NULL,
    "columns" INTEGER NOT NULL,
    "rows" INTEGER NOT NULL,
    "left_mm" DECIMAL(6,2) NOT NULL,
    "top_mm" DECIMAL(6,2) NOT NULL,
    "gap_across_mm" DECIMAL(6,2) NOT NULL,
    "gap_down_mm" DECIMAL(6,2) NOT NULL,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "label_sheet_pkey" PRIMARY KEY ("network_id","id")
);
alter table public.label_sheet add constraint "label_sheet_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.label_sheet
  add constraint label_sheet_counts check (columns between 1 and 20 and rows between 1 and 50),
  add constraint label_sheet_not_negative check (left_mm >= 0 and top_mm >= 0 and gap_across_mm >= 0 and gap_down_mm >= 0),
  -- Half a millimetre of slack for sizes rounded from inches.
  add constraint label_sheet_fits check (
    left_mm + columns * label_width_mm + (columns - 1) * gap_across_mm <= page_width_mm + 0.5
    and top_mm + rows * label_height_mm + (rows - 1) * gap_down_mm <= page_height_mm + 0.5),
  add constraint label_sheet_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

grant select, insert, update on public.label_sheet to pinset_app, pinset_definer;
create trigger keep_identity before update on public.label_sheet for each row execute function app.keep_identity();
create trigger write_history after insert or update on public.label_sheet for each row execute function app.write_history();

-- Whoever buys the sheets may write them down; only the coordinator or whoever did so mends them.
alter table public.label_sheet enable row level security;
alter table public.label_sheet force row level security;
create policy coordinator_all on public.label_sheet for all to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');
create policy member_read on public.label_sheet for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'member');
create policy member_add on public.label_sheet for insert to pinset_app
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'member'
    and created_by_id = (select app.person_id()));
create policy member_mend on public.label_sheet for update to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'member'
    and created_by_id = (select app.person_id()))
  with check (network_id = (select app.network_id()) and created_by_id = (select app.person_id()));
