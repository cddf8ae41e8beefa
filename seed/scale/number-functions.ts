/**
 * Numbers that look random and are the same each time: u(i, k) is uniform on [0, 1) and z(i, k) roughly standard
 * normal (the sum of four uniforms, scaled), for the i-th thing and the k-th question about it. `scale_id` numbers ids by kind,
 * in order, so that indexes fill from one end.
 */
export const numberFunctions = `
create function pg_temp.u(i bigint, k int) returns float8 language sql immutable as
  $$ select ((hashint8extended(i, k) >> 11) & 9007199254740991)::float8 / 9007199254740992 $$;
create function pg_temp.z(i bigint, k int) returns float8 language sql immutable as
  $$ select (pg_temp.u(i, k) + pg_temp.u(i, k + 1) + pg_temp.u(i, k + 2) + pg_temp.u(i, k + 3) - 2) * sqrt(3) $$;
create function pg_temp.scale_id(kind int, i bigint) returns uuid language sql immutable as
  $$ select (lpad(to_hex(kind), 8, '0') || '-0000-7000-8000-' || lpad(to_hex(i), 12, '0'))::uuid $$;
grant execute on all functions in schema pg_temp to public;
`;
