-- The batches behind a figure are listed from the latest on. Of a method, species or material that few batches have, a list
-- without an index of its own goes through all batches of the days asked about, and where there are none, to their end.
create index batch_outcome_method on public.batch_outcome (network_id, container, method_key, inoculated_on);
create index batch_outcome_species on public.batch_outcome (network_id, container, species_id, inoculated_on);
create index batch_outcome_material on public.batch_outcome (network_id, container, material_key, inoculated_on);
