-- A draft that was built anew, for other days or from newer records, with the words and stories of the draft it replaces; that
-- one is voided, and its figures stay for whoever asks what became different.
alter table public.report add column "rebuilt_from_id" UUID;
alter table public.report
  add constraint "report_network_id_rebuilt_from_id_fkey" foreign key ("network_id", "rebuilt_from_id") references public.report("network_id", "id") on delete restrict on update no action;
create unique index "report_network_id_rebuilt_from_id_key" on public.report("network_id", "rebuilt_from_id");
