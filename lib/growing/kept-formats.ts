/** More than any network's languages, regions and time zones need; then it starts over. */
const most = 500;

function kept<F, O>(make: (locale: string, options: O) => F): (locale: string, options: O) => F {
  const formats = new Map<string, F>();
  return (locale, options) => {
    const key = `${locale} ${JSON.stringify(options)}`;
    const known = formats.get(key);
    if (known !== undefined) return known;
    if (formats.size >= most) formats.clear();
    const format = make(locale, options);
    formats.set(key, format);
    return format;
  };
}

/** How a locale writes numbers. Making one takes a hundred times as long as writing with it, and a page writes thousands. */
export const numberFormat = kept(
  (locale, options: Intl.NumberFormatOptions) => new Intl.NumberFormat(locale, options),
);

/** The same of dates and times of day; unknown locales and time zones throw as they do without. */
export const dateTimeFormat = kept(
  (locale, options: Intl.DateTimeFormatOptions) => new Intl.DateTimeFormat(locale, options),
);
