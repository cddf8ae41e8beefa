/** A store outside the database that speaks the S3 protocol, as PHOTO_STORE names it. */
export type PhotoStoreSetting = {
  readonly accessKeyId: string;
  readonly secretAccessKey: string;
  readonly region: string;
  /** Address of the bucket, without a slash at its end. */
  readonly bucketAddress: string;
};

/**
 * Reads PHOTO_STORE: unset or `database` keeps pictures with the records; otherwise
 * `s3://KEY:SECRET@HOST/BUCKET?region=REGION` (add `&plain=yes` for a store of one's own without TLS).
 *
 * @returns undefined for the database, `wrong` for a setting that is neither.
 */
export function photoStoreSetting(setting: string | undefined): PhotoStoreSetting | 'wrong' | undefined {
  if (setting === undefined || setting === '' || setting === 'database') return undefined;
  if (!URL.canParse(setting)) return 'wrong';
  const { protocol, username, password, host, pathname, searchParams } = new URL(setting);
  const bucket = pathname.replace(/^\/|\/$/g, '');
  if (protocol !== 's3:' || !username || !password || !host || !/^[a-z0-9.-]{3,63}$/.test(bucket))
    return 'wrong';
  const scheme = searchParams.get('plain') === 'yes' ? 'http' : 'https';
  return {
    accessKeyId: decodeURIComponent(username),
    secretAccessKey: decodeURIComponent(password),
    region: searchParams.get('region') ?? 'us-east-1',
    bucketAddress: `${scheme}://${host}/${bucket}`,
  };
}

/** What is wrong with the setting, in the one line that a start is refused with. */
export const wrongPhotoStore =
  'PHOTO_STORE is neither "database" nor an address s3://KEY:SECRET@HOST/BUCKET?region=REGION.';
