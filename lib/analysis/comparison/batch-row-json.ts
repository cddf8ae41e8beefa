import 'server-only';
import { Prisma } from '@/lib/database/generated/client';

/** A row of `batch_outcome` as JSON, in the order of `EncodedBatch`. */
export const batchRowJson = Prisma.sql`json_build_array(
  batch_id, site_id, species_id, container, method_id, mixed_method, material_id, mixed_material,
  unit_count, inoculated_on, closed_on, closed_as_lost, no_harvest, voided, second_life,
  contamination_assessed_on, yield_assessed_on, dry_grams, dry_assumed, bed_area_cm2,
  contaminated_by_window_end, contaminated_at_any_time, lost_clean, last_inspected_on,
  fresh_grams_by_yield_day, fresh_grams, weighings, any_trimmed, any_as_picked, any_shared,
  run_ids, run_missing)`;
