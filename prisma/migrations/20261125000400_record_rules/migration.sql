-- What must hold whatever path a row takes into the database. Commands say the same things kindly beforehand.

alter table public.batch
  add constraint batch_unit_count check (unit_count between 1 and 100000),
  add constraint batch_bed_is_one_unit check (container_kind <> 'bed' or unit_count = 1),
  add constraint batch_wet_grams check (wet_grams > 0),
  add constraint batch_dry_grams check (dry_grams > 0),
  add constraint batch_dry_supplement check (dry_supplement_grams >= 0 and (dry_grams is null or dry_supplement_grams <= dry_grams)),
  add constraint batch_moisture check (moisture_percent >= 0 and moisture_percent < 100),
  add constraint batch_moisture_source check ((moisture_source = 'none') = (moisture_percent is null)),
  add constraint batch_dry_not_above_wet check (dry_grams is null or wet_grams is null or dry_mass_from <> 'filled_mass' or dry_grams <= wet_grams),
  add constraint batch_closed_after_start check (closed_on >= inoculated_on),
  add constraint batch_mixed_method check (not (mixed_method and method_id is not null)),
  add constraint batch_mixed_material check (not (mixed_material and material_id is not null)),
  add constraint batch_log_only check (container_kind = 'log' or (log_wood_code is null and log_diameter_mm is null and log_length_mm is null and log_green_grams is null)),
  add constraint batch_bed_only check (container_kind = 'bed' or bed_area_cm2 is null);
alter table public.substrate_lot
  add constraint substrate_lot_moisture check (moisture_percent >= 0 and moisture_percent < 100),
  add constraint substrate_lot_moisture_source check ((moisture_source = 'none') = (moisture_percent is null)),
  add constraint substrate_lot_grams check (received_grams > 0),
  add constraint substrate_lot_cut check (cut_length_mm > 0);
alter table public.material add constraint material_moisture_range check (received_moisture_percent >= 0 and received_moisture_percent < 100);
alter table public.material_moisture add constraint drained_moisture_range check (drained_moisture_percent >= 0 and drained_moisture_percent < 100);
alter table public.substrate_receipt add constraint substrate_receipt_grams check (grams > 0);
alter table public.spawn_receipt add constraint spawn_receipt_grams check (grams > 0);
alter table public.spawn_lot
  add constraint spawn_lot_grams check (received_grams > 0),
  add constraint spawn_lot_generation check (generation between 0 and 50),
  add constraint spawn_lot_not_own_parent check (parent_lot_id <> id),
  add constraint spawn_lot_dates check (received_on >= made_on);
alter table public.treatment_run
  add constraint treatment_run_times check (ended_at >= started_at),
  add constraint treatment_run_water check (water_millilitres > 0),
  add constraint treatment_run_lime check (lime_grams >= 0),
  add constraint treatment_run_load_celsius check (load_celsius_at_spawning between -20 and 130);
alter table public.treatment_allocation add constraint treatment_allocation_grams check (grams > 0);
alter table public.treatment_reading
  add constraint treatment_reading_something check (celsius is not null or ph is not null),
  add constraint treatment_reading_celsius check (celsius between -20 and 130),
  add constraint treatment_reading_ph check (ph between 0 and 14);
alter table public.batch_component add constraint batch_component_grams check (grams > 0);
alter table public.spawn_share add constraint spawn_share_grams check (grams > 0);
alter table public.finding add constraint finding_units check (units > 0);
alter table public.finding_follow_up add constraint finding_follow_up_units check (units > 0);
alter table public.finding_unit add constraint finding_unit_number check (unit_number > 0);
alter table public.loss
  add constraint loss_units check (units > 0),
  add constraint loss_contaminated check (contaminated_units between 0 and units);
alter table public.loss_unit add constraint loss_unit_number check (unit_number > 0);
alter table public.weighing add constraint weighing_grams check (fresh_grams > 0);
alter table public.weighing_line
  add constraint weighing_line_grams check (fresh_grams >= 0),
  add constraint weighing_line_flush check (flush between 1 and 60);
alter table public.weighing_destination add constraint weighing_destination_grams check (grams > 0);
alter table public.second_life_source
  add constraint second_life_units check (units_moved > 0),
  add constraint second_life_not_itself check (source_batch_id <> batch_id);
alter table public.assessment_window add constraint assessment_window_days check (contamination_days between 1 and 2000 and yield_days between 1 and 4000);
alter table public.report add constraint report_period check (period_to >= period_from);
alter table public.network add constraint network_cells check (cell_min_sites >= 3 and cell_top_two_percent between 50 and 95);

do $$
declare t text;
begin
  for t in select table_name from information_schema.columns where table_schema = 'public' and column_name = 'void_reason' loop
    execute format('alter table public.%I add constraint %I check (voided_at is null or length(trim(void_reason)) > 0)', t, t || '_void_reason');
  end loop;
end $$;

-- A unit number is named contaminated once, and named lost once.
create unique index finding_unit_once on public.finding_unit (network_id, batch_id, unit_number) where voided_at is null;
create unique index loss_unit_once on public.loss_unit (network_id, batch_id, unit_number) where voided_at is null;

-- Sums that no single row can check. The batch row is locked, so that two phones cannot both take the last unit.
create function app.check_batch_counts() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
declare b public.batch%rowtype; contaminated int; lost int;
begin
  select * into b from public.batch where network_id = new.network_id and id = new.batch_id for update;
  if tg_table_name = 'finding' then
    if new.voided_at is null and new.found_on < b.inoculated_on then
      raise exception 'found before the batch was inoculated' using errcode = 'PB002';
    end if;
    select coalesce(sum(units), 0) into contaminated from public.finding
      where network_id = b.network_id and batch_id = b.id and voided_at is null;
    if contaminated > b.unit_count then
      raise exception 'more units contaminated (%) than inoculated (%)', contaminated, b.unit_count using errcode = 'PB003';
    end if;
  elsif tg_table_name = 'loss' then
    if new.voided_at is null and new.lost_on < b.inoculated_on then
      raise exception 'lost before the batch was inoculated' using errcode = 'PB002';
    end if;
    select coalesce(sum(units), 0) into lost from public.loss
      where network_id = b.network_id and batch_id = b.id and voided_at is null;
    if lost > b.unit_count then
      raise exception 'more units lost (%) than inoculated (%)', lost, b.unit_count using errcode = 'PB003';
    end if;
  end if;
  return null;
end $$;
alter function app.check_batch_counts() owner to pinset_definer;
create trigger check_counts after insert or update on public.finding for each row execute function app.check_batch_counts();
create trigger check_counts after insert or update on public.loss for each row execute function app.check_batch_counts();

create function app.check_batch_after_correction() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
begin
  if new.unit_count < (select coalesce(sum(units), 0) from public.finding where network_id = new.network_id and batch_id = new.id and voided_at is null)
     or new.unit_count < (select coalesce(sum(units), 0) from public.loss where network_id = new.network_id and batch_id = new.id and voided_at is null) then
    raise exception 'fewer units than were reported contaminated or lost' using errcode = 'PB003';
  end if;
  if exists (select 1 from public.finding where network_id = new.network_id and batch_id = new.id and voided_at is null and found_on < new.inoculated_on)
     or exists (select 1 from public.loss where network_id = new.network_id and batch_id = new.id and voided_at is null and lost_on < new.inoculated_on)
     or exists (select 1 from public.weighing_line l join public.weighing w on w.network_id = l.network_id and w.id = l.weighing_id
       where l.network_id = new.network_id and l.batch_id = new.id and l.voided_at is null and w.voided_at is null and w.weighed_on < new.inoculated_on) then
    raise exception 'inoculated after something already recorded' using errcode = 'PB002';
  end if;
  return null;
end $$;
alter function app.check_batch_after_correction() owner to pinset_definer;
create trigger check_after_correction after update of unit_count, inoculated_on on public.batch
  for each row execute function app.check_batch_after_correction();

-- Lines of a weighing add up to its mass; destinations to at most its mass. Checked at the end of the transaction.
create function app.check_weighing() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
declare w public.weighing%rowtype; wanted uuid; total bigint;
begin
  wanted := case when tg_table_name = 'weighing' then new.id else (to_jsonb(new) ->> 'weighing_id')::uuid end;
  select * into w from public.weighing where network_id = new.network_id and id = wanted for update;
  if w.voided_at is not null then
    return null;
  end if;
  select sum(fresh_grams) into total from public.weighing_line where network_id = w.network_id and weighing_id = w.id and voided_at is null;
  if total is distinct from w.fresh_grams then
    raise exception 'batch lines (% g) do not add up to the weighing (% g)', total, w.fresh_grams using errcode = 'PB004';
  end if;
  select coalesce(sum(grams), 0) into total from public.weighing_destination where network_id = w.network_id and weighing_id = w.id and voided_at is null;
  if total > w.fresh_grams then
    raise exception 'destinations (% g) exceed the weighing (% g)', total, w.fresh_grams using errcode = 'PB004';
  end if;
  if exists (select 1 from public.weighing_line l join public.batch b on b.network_id = l.network_id and b.id = l.batch_id
    where l.network_id = w.network_id and l.weighing_id = w.id and l.voided_at is null and w.weighed_on < b.inoculated_on) then
    raise exception 'weighed before the batch was inoculated' using errcode = 'PB002';
  end if;
  return null;
end $$;
alter function app.check_weighing() owner to pinset_definer;
create constraint trigger check_weighing after insert or update on public.weighing deferrable initially deferred for each row execute function app.check_weighing();
create constraint trigger check_weighing after insert or update on public.weighing_line deferrable initially deferred for each row execute function app.check_weighing();
create constraint trigger check_weighing after insert or update on public.weighing_destination deferrable initially deferred for each row execute function app.check_weighing();
