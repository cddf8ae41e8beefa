-- The form of a new batch offers the last one that the same person began. Without an index by person the batches of the
-- whole network are gone through for somebody who began none, or none of late.
create index batch_started_by on public.batch (network_id, started_by_id, inoculated_on, id) where voided_at is null;
