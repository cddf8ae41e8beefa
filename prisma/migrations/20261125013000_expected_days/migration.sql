-- When to expect what of a batch, by species and container, as ranges of days that a network can change. Until now a
-- species had one day of each, the later end for bags, which said nothing true of its logs and beds.

alter table public.assessment_window
  add column first_look_days integer,
  add column colonised_from_days integer,
  add column colonised_to_days integer,
  add column pins_from_days integer,
  add column pins_to_days integer,
  add column first_harvest_from_days integer,
  add column first_harvest_to_days integer,
  add column between_flushes_from_days integer,
  add column between_flushes_to_days integer;

-- The owner is held by the policies of the tables it changes, so they are lifted for it within this transaction.
alter table public.species no force row level security;
alter table public.assessment_window no force row level security;
create temporary table default_days (species_code text, container text, look integer, colonised_from integer, colonised_to integer,
  pins_from integer, pins_to integer, harvest_from integer, harvest_to integer, flush_from integer, flush_to integer) on commit drop;
insert into default_days values
  ('pleurotus_ostreatus', 'bag', 10, 12, 25, 16, 32, 21, 40, 7, 14),
  ('pleurotus_ostreatus', 'bucket', 10, 12, 25, 16, 32, 21, 40, 7, 14),
  ('pleurotus_ostreatus', 'tray', 10, 12, 25, 16, 32, 21, 40, 7, 14),
  ('pleurotus_ostreatus', 'block', 10, 12, 25, 16, 32, 21, 40, 7, 14),
  ('pleurotus_ostreatus', 'log', null, 150, 365, null, null, 180, 540, null, null),
  ('pleurotus_ostreatus', 'bed', null, null, null, null, null, null, null, null, null),
  ('pleurotus_pulmonarius', 'bag', 10, 12, 25, 16, 32, 21, 40, 7, 14),
  ('pleurotus_pulmonarius', 'bucket', 10, 12, 25, 16, 32, 21, 40, 7, 14),
  ('pleurotus_pulmonarius', 'tray', 10, 12, 25, 16, 32, 21, 40, 7, 14),
  ('pleurotus_pulmonarius', 'block', 10, 12, 25, 16, 32, 21, 40, 7, 14),
  ('pleurotus_pulmonarius', 'log', null, 150, 365, null, null, 180, 540, null, null),
  ('pleurotus_pulmonarius', 'bed', null, null, null, null, null, null, null, null, null),
  ('pleurotus_citrinopileatus', 'bag', 10, 12, 25, 16, 32, 21, 40, 7, 14),
  ('pleurotus_citrinopileatus', 'bucket', 10, 12, 25, 16, 32, 21, 40, 7, 14),
  ('pleurotus_citrinopileatus', 'tray', 10, 12, 25, 16, 32, 21, 40, 7, 14),
  ('pleurotus_citrinopileatus', 'block', 10, 12, 25, 16, 32, 21, 40, 7, 14),
  ('pleurotus_djamor', 'bag', 10, 8, 18, 11, 24, 15, 30, 7, 12),
  ('pleurotus_djamor', 'bucket', 10, 8, 18, 11, 24, 15, 30, 7, 12),
  ('pleurotus_djamor', 'tray', 10, 8, 18, 11, 24, 15, 30, 7, 12),
  ('pleurotus_djamor', 'block', 10, 8, 18, 11, 24, 15, 30, 7, 12),
  ('hypsizygus_ulmarius', 'bag', 10, 14, 28, 20, 36, 25, 45, 7, 14),
  ('hypsizygus_ulmarius', 'bucket', 10, 14, 28, 20, 36, 25, 45, 7, 14),
  ('hypsizygus_ulmarius', 'tray', 10, 14, 28, 20, 36, 25, 45, 7, 14),
  ('hypsizygus_ulmarius', 'block', 10, 14, 28, 20, 36, 25, 45, 7, 14),
  ('hypsizygus_ulmarius', 'bed', null, 30, 90, null, null, 60, 240, null, null),
  ('pleurotus_eryngii', 'bag', 10, 20, 40, 26, 50, 35, 60, 10, 18),
  ('pleurotus_eryngii', 'bucket', 10, 20, 40, 26, 50, 35, 60, 10, 18),
  ('pleurotus_eryngii', 'tray', 10, 20, 40, 26, 50, 35, 60, 10, 18),
  ('pleurotus_eryngii', 'block', 10, 20, 40, 26, 50, 35, 60, 10, 18),
  ('lentinula_edodes', 'log', null, 180, 540, null, null, 180, 540, 42, 70),
  ('lentinula_edodes', 'bag', 10, 50, 90, 60, 100, 65, 110, 14, 21),
  ('lentinula_edodes', 'block', 10, 50, 90, 60, 100, 65, 110, 14, 21),
  ('hericium_erinaceus', 'bag', 10, 14, 28, 20, 35, 28, 45, 10, 18),
  ('hericium_erinaceus', 'block', 10, 14, 28, 20, 35, 28, 45, 10, 18),
  ('hericium_erinaceus', 'bucket', 10, 14, 28, 20, 35, 28, 45, 10, 18),
  ('hericium_erinaceus', 'log', null, 270, 540, null, null, 365, 730, null, null),
  ('grifola_frondosa', 'bag', 10, 40, 70, 50, 80, 60, 100, null, null),
  ('grifola_frondosa', 'block', 10, 40, 70, 50, 80, 60, 100, null, null),
  ('grifola_frondosa', 'log', null, 270, 540, null, null, 365, 730, null, null),
  ('pholiota_nameko', 'bag', 10, 30, 60, 45, 75, 55, 90, 14, 21),
  ('pholiota_nameko', 'block', 10, 30, 60, 45, 75, 55, 90, 14, 21),
  ('pholiota_nameko', 'log', null, 270, 540, null, null, 365, 730, null, null),
  ('cyclocybe_aegerita', 'bag', 10, 21, 40, 28, 50, 35, 60, 10, 18),
  ('cyclocybe_aegerita', 'block', 10, 21, 40, 28, 50, 35, 60, 10, 18),
  ('cyclocybe_aegerita', 'bucket', 10, 21, 40, 28, 50, 35, 60, 10, 18),
  ('cyclocybe_aegerita', 'log', null, 270, 540, null, null, 365, 730, null, null),
  ('stropharia_rugosoannulata', 'bed', null, 30, 60, 40, 110, 44, 240, 10, 30),
  ('stropharia_rugosoannulata', 'tray', 10, 30, 60, 40, 110, 44, 240, 10, 30),
  ('agaricus_subrufescens', 'bed', null, 17, 30, 35, 60, 42, 75, 10, 20),
  ('agaricus_subrufescens', 'tray', 10, 17, 30, 35, 60, 42, 75, 10, 20),
  ('volvariella_volvacea', 'bed', null, 5, 10, 8, 14, 10, 20, 5, 10),
  ('volvariella_volvacea', 'tray', 7, 5, 10, 8, 14, 10, 20, 5, 10)
;
update public.assessment_window w set
    first_look_days = d.look,
    colonised_from_days = d.colonised_from, colonised_to_days = d.colonised_to,
    pins_from_days = d.pins_from, pins_to_days = d.pins_to,
    first_harvest_from_days = d.harvest_from, first_harvest_to_days = d.harvest_to,
    between_flushes_from_days = d.flush_from, between_flushes_to_days = d.flush_to
  from public.species s, default_days d
  where s.network_id = w.network_id and s.id = w.species_id and d.species_code = s.code and d.container = w.container_kind::text;

-- Where a network had changed a day of a species, that day is the later end for the containers it stood for.
update public.assessment_window w set
    colonised_to_days = s.colonised_days, colonised_from_days = least(coalesce(w.colonised_from_days, s.colonised_days), s.colonised_days)
  from public.species s
  where s.network_id = w.network_id and s.id = w.species_id and w.container_kind in ('bag', 'bucket', 'tray', 'block')
    and s.colonised_days is not null and w.colonised_to_days is distinct from s.colonised_days;
update public.assessment_window w set
    pins_to_days = s.pins_days, pins_from_days = least(coalesce(w.pins_from_days, s.pins_days), s.pins_days)
  from public.species s
  where s.network_id = w.network_id and s.id = w.species_id and w.container_kind in ('bag', 'bucket', 'tray', 'block')
    and s.pins_days is not null and w.pins_to_days is distinct from s.pins_days;
update public.assessment_window w set
    first_harvest_to_days = s.first_harvest_days,
    first_harvest_from_days = least(coalesce(w.first_harvest_from_days, s.first_harvest_days), s.first_harvest_days)
  from public.species s
  where s.network_id = w.network_id and s.id = w.species_id and w.container_kind in ('bag', 'bucket', 'tray', 'block')
    and s.first_harvest_days is not null and w.first_harvest_to_days is distinct from s.first_harvest_days;
update public.assessment_window w set
    between_flushes_to_days = s.between_flushes_days,
    between_flushes_from_days = least(coalesce(w.between_flushes_from_days, s.between_flushes_days), s.between_flushes_days)
  from public.species s
  where s.network_id = w.network_id and s.id = w.species_id and w.container_kind in ('bag', 'bucket', 'tray', 'block')
    and s.between_flushes_days is not null and w.between_flushes_to_days is distinct from s.between_flushes_days;
alter table public.species force row level security;
alter table public.assessment_window force row level security;

alter table public.species
  drop column colonised_days,
  drop column pins_days,
  drop column first_harvest_days,
  drop column between_flushes_days;
alter table public.assessment_window
  add constraint assessment_window_first_look check (first_look_days between 1 and 2000),
  add constraint assessment_window_colonised check (num_nulls(colonised_from_days, colonised_to_days) <> 1
    and colonised_from_days > 0 and colonised_to_days between colonised_from_days and 4000),
  add constraint assessment_window_pins check (num_nulls(pins_from_days, pins_to_days) <> 1
    and pins_from_days > 0 and pins_to_days between pins_from_days and 4000),
  add constraint assessment_window_first_harvest check (num_nulls(first_harvest_from_days, first_harvest_to_days) <> 1
    and first_harvest_from_days > 0 and first_harvest_to_days between first_harvest_from_days and 4000),
  add constraint assessment_window_between_flushes check (num_nulls(between_flushes_from_days, between_flushes_to_days) <> 1
    and between_flushes_from_days > 0 and between_flushes_to_days between between_flushes_from_days and 4000);
