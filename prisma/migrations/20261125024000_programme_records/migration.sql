-- What a programme does beside growing: trainings, the people who came and what they agreed to, sales, practices taken
-- up. Amounts of money are whole minor units (cents) of a currency written beside them.

create type public.training_topic as enum ('growing', 'treatment', 'spawn', 'hygiene', 'food_safety', 'cooking', 'selling', 'other');
create type public.outlet_kind as enum ('farm_gate', 'farmers_market', 'box_scheme', 'shop', 'restaurant', 'institution', 'food_hub', 'online', 'other');
create type public.practice_kind as enum ('heat_treatment', 'cold_treatment', 'local_residues', 'own_spawn', 'hygiene', 'food_safety', 'record_keeping', 'second_life', 'composting', 'other');

alter table public.network
  add column "currency" CHAR(3) NOT NULL DEFAULT 'USD',
  add column "labour_minor_per_hour" INTEGER,
  add constraint network_currency check (currency ~ '^[A-Z]{3}$'),
  add constraint network_labour check (labour_minor_per_hour >= 0);

-- A person who comes to trainings, known to the records by an id; each consent is the day it was given, null when it was
-- not given or was withdrawn.
create table public.participant (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "site_id" UUID NOT NULL,
    "counted_on" DATE,
    "named_on" DATE,
    "pictured_on" DATE,
    "erased_at" TIMESTAMPTZ(3),
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "participant_pkey" PRIMARY KEY ("network_id","id")
);
create unique index "participant_network_id_site_id_id_key" on public.participant("network_id", "site_id", "id");
alter table public.participant add constraint "participant_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.participant add constraint "participant_network_id_site_id_fkey" foreign key ("network_id", "site_id") references public.site("network_id", "id") on delete restrict on update no action;
alter table public.participant
  add constraint participant_erased check (erased_at is null or (counted_on is null and named_on is null and pictured_on is null)),
  add constraint participant_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

-- The one erasable place for a participant's name; history never copies it.
create table public.participant_contact (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "name" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "participant_contact_pkey" PRIMARY KEY ("network_id","id")
);
create unique index "participant_contact_network_id_site_id_id_key" on public.participant_contact("network_id", "site_id", "id");
alter table public.participant_contact add constraint "participant_contact_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.participant_contact add constraint "participant_contact_network_id_site_id_id_fkey" foreign key ("network_id", "site_id", "id") references public.participant("network_id", "site_id", "id") on delete restrict on update no action;
alter table public.participant_contact add constraint participant_contact_name check (name is null or length(trim(name)) between 1 and 120);

create table public.training (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "site_id" UUID NOT NULL,
    "held_on" DATE NOT NULL,
    "title" TEXT NOT NULL,
    "topic" public.training_topic NOT NULL,
    "place" TEXT,
    "minutes" INTEGER,
    "head_count" INTEGER,
    "note" TEXT,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "training_pkey" PRIMARY KEY ("network_id","id")
);
create unique index "training_network_id_site_id_id_key" on public.training("network_id", "site_id", "id");
create index "training_network_id_held_on_idx" on public.training("network_id", "held_on");
alter table public.training add constraint "training_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.training add constraint "training_network_id_site_id_fkey" foreign key ("network_id", "site_id") references public.site("network_id", "id") on delete restrict on update no action;
alter table public.training
  add constraint training_title check (length(trim(title)) > 0),
  add constraint training_minutes check (minutes > 0),
  add constraint training_head_count check (head_count > 0),
  add constraint training_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

create table public.training_attendance (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "training_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "participant_id" UUID NOT NULL,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "training_attendance_pkey" PRIMARY KEY ("network_id","id")
);
create unique index training_attendance_once on public.training_attendance (network_id, training_id, participant_id) where voided_at is null;
create index "training_attendance_network_id_participant_id_idx" on public.training_attendance("network_id", "participant_id");
alter table public.training_attendance add constraint "training_attendance_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.training_attendance add constraint "training_attendance_network_id_site_id_training_id_fkey" foreign key ("network_id", "site_id", "training_id") references public.training("network_id", "site_id", "id") on delete restrict on update no action;
alter table public.training_attendance add constraint "training_attendance_network_id_participant_id_fkey" foreign key ("network_id", "participant_id") references public.participant("network_id", "id") on delete restrict on update no action;
alter table public.training_attendance add constraint training_attendance_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

-- How often each point of a question's scale, 1 to scale_most, was chosen before and after: counts, so that no answer
-- leads back to a person.
create table public.training_question (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "training_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "wording" TEXT NOT NULL,
    "scale_most" INTEGER NOT NULL,
    "least_label" TEXT,
    "most_label" TEXT,
    "before_counts" INTEGER[] NOT NULL,
    "after_counts" INTEGER[] NOT NULL,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "training_question_pkey" PRIMARY KEY ("network_id","id")
);
create index "training_question_network_id_training_id_idx" on public.training_question("network_id", "training_id");
alter table public.training_question add constraint "training_question_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.training_question add constraint "training_question_network_id_site_id_training_id_fkey" foreign key ("network_id", "site_id", "training_id") references public.training("network_id", "site_id", "id") on delete restrict on update no action;
alter table public.training_question
  add constraint training_question_wording check (length(trim(wording)) > 0),
  add constraint training_question_scale check (scale_most between 2 and 10),
  add constraint training_question_counts check (cardinality(before_counts) = scale_most and cardinality(after_counts) = scale_most
    and 0 <= all (before_counts) and 0 <= all (after_counts)),
  add constraint training_question_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

create table public.sale (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "site_id" UUID NOT NULL,
    "sold_on" DATE NOT NULL,
    "outlet" public.outlet_kind NOT NULL,
    "grams" INTEGER NOT NULL,
    "amount_minor" INTEGER NOT NULL,
    "currency" CHAR(3) NOT NULL,
    "customers" INTEGER,
    "note" TEXT,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "sale_pkey" PRIMARY KEY ("network_id","id")
);
create index "sale_network_id_sold_on_idx" on public.sale("network_id", "sold_on");
create index "sale_network_id_site_id_sold_on_idx" on public.sale("network_id", "site_id", "sold_on");
alter table public.sale add constraint "sale_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.sale add constraint "sale_network_id_site_id_fkey" foreign key ("network_id", "site_id") references public.site("network_id", "id") on delete restrict on update no action;
alter table public.sale
  add constraint sale_grams check (grams > 0),
  add constraint sale_amount check (amount_minor >= 0),
  add constraint sale_currency check (currency ~ '^[A-Z]{3}$'),
  add constraint sale_customers check (customers > 0),
  add constraint sale_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

create table public.adopted_practice (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "site_id" UUID NOT NULL,
    "practice" public.practice_kind NOT NULL,
    "description" TEXT,
    "since" DATE NOT NULL,
    "until" DATE,
    "growers" INTEGER,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "adopted_practice_pkey" PRIMARY KEY ("network_id","id")
);
create index "adopted_practice_network_id_since_idx" on public.adopted_practice("network_id", "since");
alter table public.adopted_practice add constraint "adopted_practice_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.adopted_practice add constraint "adopted_practice_network_id_site_id_fkey" foreign key ("network_id", "site_id") references public.site("network_id", "id") on delete restrict on update no action;
alter table public.adopted_practice
  add constraint adopted_practice_span check (until is null or until >= since),
  add constraint adopted_practice_growers check (growers > 0),
  add constraint adopted_practice_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

grant select, insert, update on public.participant, public.participant_contact, public.training, public.training_attendance,
  public.training_question, public.sale, public.adopted_practice to pinset_app, pinset_definer;

do $$
declare t text;
begin
  foreach t in array array['participant', 'participant_contact', 'training', 'training_attendance', 'training_question', 'sale', 'adopted_practice'] loop
    execute format('alter table public.%I enable row level security', t);
    execute format('alter table public.%I force row level security', t);
    execute format($p$create policy coordinator_all on public.%I for all to pinset_app
      using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
      with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')$p$, t);
    execute format($p$create policy member_own_sites on public.%I for all to pinset_app
      using (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]))
      with check (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]))$p$, t);
    execute format('create trigger keep_identity before update on public.%I for each row execute function app.keep_identity()', t);
    if t <> 'participant_contact' then
      execute format('create trigger write_history after insert or update on public.%I for each row execute function app.write_history()', t);
    end if;
  end loop;
end $$;
