-- CreateSchema
CREATE SCHEMA IF NOT EXISTS "public";

-- CreateEnum
CREATE TYPE "membership_role" AS ENUM ('coordinator', 'member', 'funder');

-- CreateEnum
CREATE TYPE "container_kind" AS ENUM ('bag', 'bucket', 'tray', 'bed', 'log', 'block');

-- CreateEnum
CREATE TYPE "method_kind" AS ENUM ('hot_water_bath', 'cold_lime_soak', 'cold_ferment', 'steam', 'untreated');

-- CreateEnum
CREATE TYPE "material_kind" AS ENUM ('straw', 'wood_chips', 'sawdust', 'log_wood', 'corn_residue', 'coffee_grounds', 'husk', 'cardboard', 'spent_substrate', 'other');

-- CreateEnum
CREATE TYPE "moisture_source" AS ENUM ('measured', 'assumed', 'none');

-- CreateEnum
CREATE TYPE "spawn_form" AS ENUM ('grain', 'sawdust', 'plug', 'other');

-- CreateEnum
CREATE TYPE "trim_state" AS ENUM ('trimmed', 'as_picked');

-- CreateEnum
CREATE TYPE "component_role" AS ENUM ('substrate', 'supplement', 'additive');

-- CreateEnum
CREATE TYPE "mass_stage" AS ENUM ('before_treatment', 'filled');

-- CreateEnum
CREATE TYPE "dry_mass_from" AS ENUM ('filled_mass', 'mass_before_treatment', 'log_size', 'log_green_mass', 'none');

-- CreateEnum
CREATE TYPE "contamination_sign" AS ENUM ('green', 'blue_green', 'black', 'orange_pink', 'grey_cobweb', 'yellow', 'wet_brown', 'ink_caps', 'flies', 'mites', 'sour_smell', 'other');

-- CreateEnum
CREATE TYPE "crop_stage" AS ENUM ('colonising', 'cropping');

-- CreateEnum
CREATE TYPE "finding_action" AS ENUM ('left_in_place', 'isolated', 'cut_out', 'discarded', 'buried');

-- CreateEnum
CREATE TYPE "loss_cause" AS ENUM ('dried_out', 'overheated', 'eaten', 'damaged', 'other');

-- CreateEnum
CREATE TYPE "check_kind" AS ENUM ('fully_colonised', 'pins_seen');

-- CreateEnum
CREATE TYPE "destination" AS ENUM ('sold', 'given', 'kept', 'discarded');

-- CreateEnum
CREATE TYPE "close_reason" AS ENUM ('finished', 'contaminated', 'lost', 'moved_on', 'other');

-- CreateEnum
CREATE TYPE "spent_destination" AS ENUM ('composted', 'second_life', 'mulch', 'animal_bedding', 'discarded', 'other');

-- CreateEnum
CREATE TYPE "no_harvest" AS ENUM ('none_picked', 'not_weighed');

-- CreateEnum
CREATE TYPE "reading_place" AS ENUM ('load_middle', 'water');

-- CreateEnum
CREATE TYPE "site_kind" AS ENUM ('community_garden', 'school_garden', 'farm', 'allotment', 'indoor_room', 'other');

-- CreateEnum
CREATE TYPE "record_origin" AS ENUM ('form', 'offline', 'file_import', 'api', 'seed');

-- CreateEnum
CREATE TYPE "mass_unit" AS ENUM ('kg', 'lb');

-- CreateEnum
CREATE TYPE "temperature_unit" AS ENUM ('celsius', 'fahrenheit');

-- CreateEnum
CREATE TYPE "volume_unit" AS ENUM ('litre', 'gallon');

-- CreateEnum
CREATE TYPE "language" AS ENUM ('en', 'es');

-- CreateEnum
CREATE TYPE "history_action" AS ENUM ('created', 'changed');

-- CreateTable
CREATE TABLE "person" (
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "language" "language" NOT NULL DEFAULT 'en',
    "region" TEXT NOT NULL DEFAULT 'en-US',
    "mass_unit" "mass_unit" NOT NULL DEFAULT 'kg',
    "temperature_unit" "temperature_unit" NOT NULL DEFAULT 'celsius',
    "volume_unit" "volume_unit" NOT NULL DEFAULT 'litre',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "disabled_at" TIMESTAMPTZ(3),

    CONSTRAINT "person_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "person_contact" (
    "person_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,

    CONSTRAINT "person_contact_pkey" PRIMARY KEY ("person_id")
);

-- CreateTable
CREATE TABLE "account" (
    "person_id" UUID NOT NULL,
    "password_hash" TEXT NOT NULL,
    "password_changed_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "failed_count" INTEGER NOT NULL DEFAULT 0,
    "locked_until" TIMESTAMPTZ(3),

    CONSTRAINT "account_pkey" PRIMARY KEY ("person_id")
);

-- CreateTable
CREATE TABLE "session" (
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "person_id" UUID NOT NULL,
    "network_id" UUID,
    "device" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "last_seen_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "ended_at" TIMESTAMPTZ(3),

    CONSTRAINT "session_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "setup_link" (
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "token_hash" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "used_at" TIMESTAMPTZ(3),

    CONSTRAINT "setup_link_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "network" (
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "name" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "time_zone" TEXT NOT NULL,
    "region" TEXT NOT NULL DEFAULT 'en-US',
    "cell_min_sites" INTEGER NOT NULL DEFAULT 5,
    "cell_top_two_percent" INTEGER NOT NULL DEFAULT 85,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "network_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "membership" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "person_id" UUID NOT NULL,
    "role" "membership_role" NOT NULL,
    "counted_in_reports" BOOLEAN NOT NULL DEFAULT true,
    "ended_at" TIMESTAMPTZ(3),
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "membership_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "membership_site" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "membership_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "ended_at" TIMESTAMPTZ(3),
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "membership_site_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "invitation" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "token_hash" TEXT NOT NULL,
    "role" "membership_role" NOT NULL,
    "site_ids" UUID[],
    "for_name" TEXT,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "accepted_at" TIMESTAMPTZ(3),
    "accepted_by_id" UUID,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "invitation_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "site" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "kind" "site_kind" NOT NULL,
    "time_zone" TEXT NOT NULL,
    "trim_default" "trim_state" NOT NULL DEFAULT 'as_picked',
    "opened_on" DATE,
    "closed_on" DATE,
    "note" TEXT,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "site_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "species" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "code" TEXT NOT NULL,
    "name_en" TEXT NOT NULL,
    "name_es" TEXT NOT NULL,
    "scientific_name" TEXT NOT NULL,
    "taxon_id" INTEGER,
    "lime_tolerant" BOOLEAN NOT NULL,
    "colonised_days" INTEGER,
    "pins_days" INTEGER,
    "first_harvest_days" INTEGER,
    "between_flushes_days" INTEGER,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "species_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "assessment_window" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "species_id" UUID NOT NULL,
    "container_kind" "container_kind" NOT NULL,
    "contamination_days" INTEGER NOT NULL,
    "yield_days" INTEGER NOT NULL,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "assessment_window_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "material" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "code" TEXT NOT NULL,
    "name_en" TEXT NOT NULL,
    "name_es" TEXT NOT NULL,
    "kind" "material_kind" NOT NULL,
    "received_moisture_percent" DECIMAL(5,2),
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "material_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "method" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "code" TEXT NOT NULL,
    "name_en" TEXT NOT NULL,
    "name_es" TEXT NOT NULL,
    "kind" "method_kind" NOT NULL,
    "min_celsius" DECIMAL(4,1),
    "max_celsius" DECIMAL(4,1),
    "min_ph" DECIMAL(4,2),
    "max_ph" DECIMAL(4,2),
    "min_minutes" INTEGER,
    "max_minutes" INTEGER,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "method_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "material_moisture" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "material_id" UUID NOT NULL,
    "method_id" UUID NOT NULL,
    "drained_moisture_percent" DECIMAL(5,2) NOT NULL,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "material_moisture_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "substrate_lot" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "code" TEXT NOT NULL,
    "material_id" UUID NOT NULL,
    "source_name" TEXT,
    "received_on" DATE NOT NULL,
    "received_grams" INTEGER,
    "moisture_percent" DECIMAL(5,2),
    "moisture_source" "moisture_source" NOT NULL,
    "cut_length_mm" INTEGER,
    "note" TEXT,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "substrate_lot_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "substrate_receipt" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "substrate_lot_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "received_on" DATE NOT NULL,
    "grams" INTEGER NOT NULL,
    "note" TEXT,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "substrate_receipt_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "spawn_lot" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "code" TEXT NOT NULL,
    "species_id" UUID NOT NULL,
    "strain" TEXT,
    "form" "spawn_form" NOT NULL,
    "maker" TEXT,
    "maker_code" TEXT,
    "made_on" DATE,
    "received_on" DATE,
    "received_grams" INTEGER,
    "parent_lot_id" UUID,
    "culture_name" TEXT,
    "generation" INTEGER,
    "note" TEXT,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "spawn_lot_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "spawn_receipt" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "spawn_lot_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "received_on" DATE NOT NULL,
    "grams" INTEGER NOT NULL,
    "note" TEXT,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "spawn_receipt_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "treatment_run" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "code" TEXT NOT NULL,
    "site_id" UUID NOT NULL,
    "method_id" UUID NOT NULL,
    "started_at" TIMESTAMPTZ(3) NOT NULL,
    "ended_at" TIMESTAMPTZ(3),
    "water_millilitres" INTEGER,
    "lime_grams" INTEGER,
    "load_celsius_at_spawning" DECIMAL(4,1),
    "note" TEXT,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "treatment_run_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "treatment_allocation" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "treatment_run_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "grams" INTEGER,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "treatment_allocation_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "treatment_reading" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "treatment_run_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "read_at" TIMESTAMPTZ(3) NOT NULL,
    "place" "reading_place" NOT NULL,
    "celsius" DECIMAL(4,1),
    "ph" DECIMAL(4,2),
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "treatment_reading_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "batch" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "code" TEXT NOT NULL,
    "site_id" UUID NOT NULL,
    "species_id" UUID NOT NULL,
    "container_kind" "container_kind" NOT NULL,
    "unit_count" INTEGER NOT NULL,
    "inoculated_on" DATE NOT NULL,
    "started_by_id" UUID,
    "method_id" UUID,
    "mixed_method" BOOLEAN NOT NULL DEFAULT false,
    "material_id" UUID,
    "mixed_material" BOOLEAN NOT NULL DEFAULT false,
    "wet_grams" INTEGER,
    "moisture_percent" DECIMAL(5,2),
    "moisture_source" "moisture_source" NOT NULL,
    "dry_mass_from" "dry_mass_from" NOT NULL,
    "dry_grams" INTEGER,
    "dry_supplement_grams" INTEGER NOT NULL DEFAULT 0,
    "dry_assumed" BOOLEAN NOT NULL DEFAULT false,
    "spawn_grams" INTEGER,
    "bed_area_cm2" INTEGER,
    "log_wood_code" INTEGER,
    "log_diameter_mm" INTEGER,
    "log_length_mm" INTEGER,
    "log_green_grams" INTEGER,
    "second_life" BOOLEAN NOT NULL DEFAULT false,
    "contamination_assessed_on" DATE,
    "yield_assessed_on" DATE,
    "closed_on" DATE,
    "close_reason" "close_reason",
    "spent_destination" "spent_destination",
    "no_harvest" "no_harvest",
    "note" TEXT,
    "entered" JSONB,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "batch_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "batch_component" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "batch_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "substrate_lot_id" UUID NOT NULL,
    "method_id" UUID NOT NULL,
    "treatment_run_id" UUID,
    "role" "component_role" NOT NULL,
    "grams" INTEGER,
    "mass_stage" "mass_stage" NOT NULL,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "batch_component_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "spawn_share" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "batch_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "spawn_lot_id" UUID NOT NULL,
    "grams" INTEGER,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "spawn_share_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "look" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "batch_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "looked_on" DATE NOT NULL,
    "note" TEXT,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "look_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "finding" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "batch_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "found_on" DATE NOT NULL,
    "units" INTEGER NOT NULL,
    "sign" "contamination_sign" NOT NULL,
    "stage" "crop_stage" NOT NULL,
    "action" "finding_action" NOT NULL,
    "note" TEXT,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "finding_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "finding_unit" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "finding_id" UUID NOT NULL,
    "batch_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "unit_number" INTEGER NOT NULL,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "finding_unit_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "finding_follow_up" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "finding_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "done_on" DATE NOT NULL,
    "action" "finding_action" NOT NULL,
    "units" INTEGER NOT NULL,
    "note" TEXT,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "finding_follow_up_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "loss" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "batch_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "lost_on" DATE NOT NULL,
    "units" INTEGER NOT NULL,
    "contaminated_units" INTEGER NOT NULL DEFAULT 0,
    "cause" "loss_cause" NOT NULL,
    "note" TEXT,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "loss_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "loss_unit" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "loss_id" UUID NOT NULL,
    "batch_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "unit_number" INTEGER NOT NULL,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "loss_unit_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "check" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "batch_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "checked_on" DATE NOT NULL,
    "kind" "check_kind" NOT NULL,
    "note" TEXT,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "check_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "weighing" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "site_id" UUID NOT NULL,
    "weighed_on" DATE NOT NULL,
    "fresh_grams" INTEGER NOT NULL,
    "trim_state" "trim_state" NOT NULL,
    "grade" TEXT,
    "note" TEXT,
    "entered" JSONB,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "weighing_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "weighing_line" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "weighing_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "batch_id" UUID NOT NULL,
    "flush" INTEGER NOT NULL,
    "fresh_grams" INTEGER NOT NULL,
    "shared_weighing" BOOLEAN NOT NULL DEFAULT false,
    "forced_flush" BOOLEAN,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "weighing_line_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "weighing_destination" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "weighing_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "destination" "destination" NOT NULL,
    "grams" INTEGER NOT NULL,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "weighing_destination_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "second_life_source" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "batch_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "source_batch_id" UUID NOT NULL,
    "source_site_id" UUID NOT NULL,
    "units_moved" INTEGER NOT NULL,
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "second_life_source_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "report" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "title" TEXT NOT NULL,
    "period_from" DATE NOT NULL,
    "period_to" DATE NOT NULL,
    "content" JSONB NOT NULL,
    "built_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "published_at" TIMESTAMPTZ(3),
    "origin" "record_origin" NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "report_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateTable
CREATE TABLE "history" (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "person_id" UUID,
    "site_id" UUID,
    "table_name" TEXT NOT NULL,
    "record_id" UUID NOT NULL,
    "action" "history_action" NOT NULL,
    "old_values" JSONB,
    "new_values" JSONB,
    "reason" TEXT,
    "origin" TEXT,

    CONSTRAINT "history_pkey" PRIMARY KEY ("network_id","id")
);

-- CreateIndex
CREATE UNIQUE INDEX "person_contact_email_key" ON "person_contact"("email");

-- CreateIndex
CREATE INDEX "session_person_id_idx" ON "session"("person_id");

-- CreateIndex
CREATE UNIQUE INDEX "setup_link_token_hash_key" ON "setup_link"("token_hash");

-- CreateIndex
CREATE UNIQUE INDEX "network_code_key" ON "network"("code");

-- CreateIndex
CREATE INDEX "membership_person_id_idx" ON "membership"("person_id");

-- CreateIndex
CREATE UNIQUE INDEX "membership_network_id_person_id_key" ON "membership"("network_id", "person_id");

-- CreateIndex
CREATE UNIQUE INDEX "membership_site_network_id_membership_id_site_id_key" ON "membership_site"("network_id", "membership_id", "site_id");

-- CreateIndex
CREATE UNIQUE INDEX "invitation_token_hash_key" ON "invitation"("token_hash");

-- CreateIndex
CREATE UNIQUE INDEX "site_network_id_code_key" ON "site"("network_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "species_network_id_code_key" ON "species"("network_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "assessment_window_network_id_species_id_container_kind_key" ON "assessment_window"("network_id", "species_id", "container_kind");

-- CreateIndex
CREATE UNIQUE INDEX "material_network_id_code_key" ON "material"("network_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "method_network_id_code_key" ON "method"("network_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "material_moisture_network_id_material_id_method_id_key" ON "material_moisture"("network_id", "material_id", "method_id");

-- CreateIndex
CREATE INDEX "substrate_lot_network_id_received_on_idx" ON "substrate_lot"("network_id", "received_on");

-- CreateIndex
CREATE UNIQUE INDEX "substrate_lot_network_id_code_key" ON "substrate_lot"("network_id", "code");

-- CreateIndex
CREATE INDEX "spawn_lot_network_id_species_id_idx" ON "spawn_lot"("network_id", "species_id");

-- CreateIndex
CREATE UNIQUE INDEX "spawn_lot_network_id_code_key" ON "spawn_lot"("network_id", "code");

-- CreateIndex
CREATE INDEX "treatment_run_network_id_site_id_started_at_idx" ON "treatment_run"("network_id", "site_id", "started_at");

-- CreateIndex
CREATE UNIQUE INDEX "treatment_run_network_id_code_key" ON "treatment_run"("network_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "treatment_run_network_id_id_method_id_key" ON "treatment_run"("network_id", "id", "method_id");

-- CreateIndex
CREATE UNIQUE INDEX "treatment_run_network_id_site_id_id_key" ON "treatment_run"("network_id", "site_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "treatment_allocation_network_id_treatment_run_id_site_id_key" ON "treatment_allocation"("network_id", "treatment_run_id", "site_id");

-- CreateIndex
CREATE INDEX "treatment_reading_network_id_treatment_run_id_read_at_idx" ON "treatment_reading"("network_id", "treatment_run_id", "read_at");

-- CreateIndex
CREATE INDEX "batch_network_id_site_id_inoculated_on_idx" ON "batch"("network_id", "site_id", "inoculated_on");

-- CreateIndex
CREATE INDEX "batch_network_id_inoculated_on_idx" ON "batch"("network_id", "inoculated_on");

-- CreateIndex
CREATE INDEX "batch_network_id_species_id_container_kind_inoculated_on_idx" ON "batch"("network_id", "species_id", "container_kind", "inoculated_on");

-- CreateIndex
CREATE UNIQUE INDEX "batch_network_id_code_key" ON "batch"("network_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "batch_network_id_site_id_id_key" ON "batch"("network_id", "site_id", "id");

-- CreateIndex
CREATE INDEX "batch_component_network_id_batch_id_idx" ON "batch_component"("network_id", "batch_id");

-- CreateIndex
CREATE INDEX "batch_component_network_id_treatment_run_id_idx" ON "batch_component"("network_id", "treatment_run_id");

-- CreateIndex
CREATE INDEX "batch_component_network_id_substrate_lot_id_idx" ON "batch_component"("network_id", "substrate_lot_id");

-- CreateIndex
CREATE INDEX "spawn_share_network_id_batch_id_idx" ON "spawn_share"("network_id", "batch_id");

-- CreateIndex
CREATE INDEX "spawn_share_network_id_spawn_lot_id_idx" ON "spawn_share"("network_id", "spawn_lot_id");

-- CreateIndex
CREATE INDEX "look_network_id_batch_id_idx" ON "look"("network_id", "batch_id");

-- CreateIndex
CREATE INDEX "finding_network_id_batch_id_idx" ON "finding"("network_id", "batch_id");

-- CreateIndex
CREATE UNIQUE INDEX "finding_network_id_site_id_id_key" ON "finding"("network_id", "site_id", "id");

-- CreateIndex
CREATE INDEX "finding_unit_network_id_finding_id_idx" ON "finding_unit"("network_id", "finding_id");

-- CreateIndex
CREATE INDEX "finding_follow_up_network_id_finding_id_idx" ON "finding_follow_up"("network_id", "finding_id");

-- CreateIndex
CREATE INDEX "loss_network_id_batch_id_idx" ON "loss"("network_id", "batch_id");

-- CreateIndex
CREATE UNIQUE INDEX "loss_network_id_site_id_id_key" ON "loss"("network_id", "site_id", "id");

-- CreateIndex
CREATE INDEX "loss_unit_network_id_loss_id_idx" ON "loss_unit"("network_id", "loss_id");

-- CreateIndex
CREATE INDEX "check_network_id_batch_id_idx" ON "check"("network_id", "batch_id");

-- CreateIndex
CREATE INDEX "weighing_network_id_site_id_weighed_on_idx" ON "weighing"("network_id", "site_id", "weighed_on");

-- CreateIndex
CREATE INDEX "weighing_network_id_weighed_on_idx" ON "weighing"("network_id", "weighed_on");

-- CreateIndex
CREATE UNIQUE INDEX "weighing_network_id_site_id_id_key" ON "weighing"("network_id", "site_id", "id");

-- CreateIndex
CREATE INDEX "weighing_line_network_id_weighing_id_idx" ON "weighing_line"("network_id", "weighing_id");

-- CreateIndex
CREATE INDEX "weighing_line_network_id_batch_id_idx" ON "weighing_line"("network_id", "batch_id");

-- CreateIndex
CREATE INDEX "weighing_destination_network_id_weighing_id_idx" ON "weighing_destination"("network_id", "weighing_id");

-- CreateIndex
CREATE INDEX "second_life_source_network_id_batch_id_idx" ON "second_life_source"("network_id", "batch_id");

-- CreateIndex
CREATE INDEX "second_life_source_network_id_source_batch_id_idx" ON "second_life_source"("network_id", "source_batch_id");

-- CreateIndex
CREATE INDEX "report_network_id_published_at_idx" ON "report"("network_id", "published_at");

-- CreateIndex
CREATE INDEX "history_network_id_record_id_idx" ON "history"("network_id", "record_id");

-- CreateIndex
CREATE INDEX "history_network_id_at_idx" ON "history"("network_id", "at");

-- AddForeignKey
ALTER TABLE "person_contact" ADD CONSTRAINT "person_contact_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "account" ADD CONSTRAINT "account_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "session" ADD CONSTRAINT "session_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "session" ADD CONSTRAINT "session_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "membership" ADD CONSTRAINT "membership_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "membership" ADD CONSTRAINT "membership_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "membership_site" ADD CONSTRAINT "membership_site_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "membership_site" ADD CONSTRAINT "membership_site_network_id_membership_id_fkey" FOREIGN KEY ("network_id", "membership_id") REFERENCES "membership"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "membership_site" ADD CONSTRAINT "membership_site_network_id_site_id_fkey" FOREIGN KEY ("network_id", "site_id") REFERENCES "site"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "site" ADD CONSTRAINT "site_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "species" ADD CONSTRAINT "species_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "assessment_window" ADD CONSTRAINT "assessment_window_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "assessment_window" ADD CONSTRAINT "assessment_window_network_id_species_id_fkey" FOREIGN KEY ("network_id", "species_id") REFERENCES "species"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "material" ADD CONSTRAINT "material_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "method" ADD CONSTRAINT "method_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "material_moisture" ADD CONSTRAINT "material_moisture_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "material_moisture" ADD CONSTRAINT "material_moisture_network_id_material_id_fkey" FOREIGN KEY ("network_id", "material_id") REFERENCES "material"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "material_moisture" ADD CONSTRAINT "material_moisture_network_id_method_id_fkey" FOREIGN KEY ("network_id", "method_id") REFERENCES "method"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "substrate_lot" ADD CONSTRAINT "substrate_lot_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "substrate_lot" ADD CONSTRAINT "substrate_lot_network_id_material_id_fkey" FOREIGN KEY ("network_id", "material_id") REFERENCES "material"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "substrate_receipt" ADD CONSTRAINT "substrate_receipt_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "substrate_receipt" ADD CONSTRAINT "substrate_receipt_network_id_substrate_lot_id_fkey" FOREIGN KEY ("network_id", "substrate_lot_id") REFERENCES "substrate_lot"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "substrate_receipt" ADD CONSTRAINT "substrate_receipt_network_id_site_id_fkey" FOREIGN KEY ("network_id", "site_id") REFERENCES "site"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "spawn_lot" ADD CONSTRAINT "spawn_lot_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "spawn_lot" ADD CONSTRAINT "spawn_lot_network_id_species_id_fkey" FOREIGN KEY ("network_id", "species_id") REFERENCES "species"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "spawn_lot" ADD CONSTRAINT "spawn_lot_network_id_parent_lot_id_fkey" FOREIGN KEY ("network_id", "parent_lot_id") REFERENCES "spawn_lot"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "spawn_receipt" ADD CONSTRAINT "spawn_receipt_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "spawn_receipt" ADD CONSTRAINT "spawn_receipt_network_id_spawn_lot_id_fkey" FOREIGN KEY ("network_id", "spawn_lot_id") REFERENCES "spawn_lot"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "spawn_receipt" ADD CONSTRAINT "spawn_receipt_network_id_site_id_fkey" FOREIGN KEY ("network_id", "site_id") REFERENCES "site"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "treatment_run" ADD CONSTRAINT "treatment_run_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "treatment_run" ADD CONSTRAINT "treatment_run_network_id_site_id_fkey" FOREIGN KEY ("network_id", "site_id") REFERENCES "site"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "treatment_run" ADD CONSTRAINT "treatment_run_network_id_method_id_fkey" FOREIGN KEY ("network_id", "method_id") REFERENCES "method"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "treatment_allocation" ADD CONSTRAINT "treatment_allocation_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "treatment_allocation" ADD CONSTRAINT "treatment_allocation_network_id_treatment_run_id_fkey" FOREIGN KEY ("network_id", "treatment_run_id") REFERENCES "treatment_run"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "treatment_allocation" ADD CONSTRAINT "treatment_allocation_network_id_site_id_fkey" FOREIGN KEY ("network_id", "site_id") REFERENCES "site"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "treatment_reading" ADD CONSTRAINT "treatment_reading_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "treatment_reading" ADD CONSTRAINT "treatment_reading_network_id_site_id_treatment_run_id_fkey" FOREIGN KEY ("network_id", "site_id", "treatment_run_id") REFERENCES "treatment_run"("network_id", "site_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "batch" ADD CONSTRAINT "batch_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "batch" ADD CONSTRAINT "batch_network_id_site_id_fkey" FOREIGN KEY ("network_id", "site_id") REFERENCES "site"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "batch" ADD CONSTRAINT "batch_network_id_species_id_fkey" FOREIGN KEY ("network_id", "species_id") REFERENCES "species"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "batch" ADD CONSTRAINT "batch_network_id_method_id_fkey" FOREIGN KEY ("network_id", "method_id") REFERENCES "method"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "batch" ADD CONSTRAINT "batch_network_id_material_id_fkey" FOREIGN KEY ("network_id", "material_id") REFERENCES "material"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "batch" ADD CONSTRAINT "batch_started_by_id_fkey" FOREIGN KEY ("started_by_id") REFERENCES "person"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "batch_component" ADD CONSTRAINT "batch_component_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "batch_component" ADD CONSTRAINT "batch_component_network_id_site_id_batch_id_fkey" FOREIGN KEY ("network_id", "site_id", "batch_id") REFERENCES "batch"("network_id", "site_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "batch_component" ADD CONSTRAINT "batch_component_network_id_substrate_lot_id_fkey" FOREIGN KEY ("network_id", "substrate_lot_id") REFERENCES "substrate_lot"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "batch_component" ADD CONSTRAINT "batch_component_network_id_method_id_fkey" FOREIGN KEY ("network_id", "method_id") REFERENCES "method"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "batch_component" ADD CONSTRAINT "batch_component_network_id_treatment_run_id_method_id_fkey" FOREIGN KEY ("network_id", "treatment_run_id", "method_id") REFERENCES "treatment_run"("network_id", "id", "method_id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "spawn_share" ADD CONSTRAINT "spawn_share_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "spawn_share" ADD CONSTRAINT "spawn_share_network_id_site_id_batch_id_fkey" FOREIGN KEY ("network_id", "site_id", "batch_id") REFERENCES "batch"("network_id", "site_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "spawn_share" ADD CONSTRAINT "spawn_share_network_id_spawn_lot_id_fkey" FOREIGN KEY ("network_id", "spawn_lot_id") REFERENCES "spawn_lot"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "look" ADD CONSTRAINT "look_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "look" ADD CONSTRAINT "look_network_id_site_id_batch_id_fkey" FOREIGN KEY ("network_id", "site_id", "batch_id") REFERENCES "batch"("network_id", "site_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "finding" ADD CONSTRAINT "finding_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "finding" ADD CONSTRAINT "finding_network_id_site_id_batch_id_fkey" FOREIGN KEY ("network_id", "site_id", "batch_id") REFERENCES "batch"("network_id", "site_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "finding_unit" ADD CONSTRAINT "finding_unit_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "finding_unit" ADD CONSTRAINT "finding_unit_network_id_site_id_finding_id_fkey" FOREIGN KEY ("network_id", "site_id", "finding_id") REFERENCES "finding"("network_id", "site_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "finding_follow_up" ADD CONSTRAINT "finding_follow_up_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "finding_follow_up" ADD CONSTRAINT "finding_follow_up_network_id_site_id_finding_id_fkey" FOREIGN KEY ("network_id", "site_id", "finding_id") REFERENCES "finding"("network_id", "site_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "loss" ADD CONSTRAINT "loss_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "loss" ADD CONSTRAINT "loss_network_id_site_id_batch_id_fkey" FOREIGN KEY ("network_id", "site_id", "batch_id") REFERENCES "batch"("network_id", "site_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "loss_unit" ADD CONSTRAINT "loss_unit_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "loss_unit" ADD CONSTRAINT "loss_unit_network_id_site_id_loss_id_fkey" FOREIGN KEY ("network_id", "site_id", "loss_id") REFERENCES "loss"("network_id", "site_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "check" ADD CONSTRAINT "check_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "check" ADD CONSTRAINT "check_network_id_site_id_batch_id_fkey" FOREIGN KEY ("network_id", "site_id", "batch_id") REFERENCES "batch"("network_id", "site_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "weighing" ADD CONSTRAINT "weighing_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "weighing" ADD CONSTRAINT "weighing_network_id_site_id_fkey" FOREIGN KEY ("network_id", "site_id") REFERENCES "site"("network_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "weighing_line" ADD CONSTRAINT "weighing_line_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "weighing_line" ADD CONSTRAINT "weighing_line_network_id_site_id_weighing_id_fkey" FOREIGN KEY ("network_id", "site_id", "weighing_id") REFERENCES "weighing"("network_id", "site_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "weighing_line" ADD CONSTRAINT "weighing_line_network_id_site_id_batch_id_fkey" FOREIGN KEY ("network_id", "site_id", "batch_id") REFERENCES "batch"("network_id", "site_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "weighing_destination" ADD CONSTRAINT "weighing_destination_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "weighing_destination" ADD CONSTRAINT "weighing_destination_network_id_site_id_weighing_id_fkey" FOREIGN KEY ("network_id", "site_id", "weighing_id") REFERENCES "weighing"("network_id", "site_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "second_life_source" ADD CONSTRAINT "second_life_source_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "second_life_source" ADD CONSTRAINT "second_life_source_network_id_site_id_batch_id_fkey" FOREIGN KEY ("network_id", "site_id", "batch_id") REFERENCES "batch"("network_id", "site_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "second_life_source" ADD CONSTRAINT "second_life_source_network_id_source_site_id_source_batch__fkey" FOREIGN KEY ("network_id", "source_site_id", "source_batch_id") REFERENCES "batch"("network_id", "site_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "report" ADD CONSTRAINT "report_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "history" ADD CONSTRAINT "history_network_id_fkey" FOREIGN KEY ("network_id") REFERENCES "network"("id") ON DELETE RESTRICT ON UPDATE NO ACTION;
