import { say } from './say.ts';
import { localeOf, speech } from './settings.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/** 'just now', '5 minutes ago', 'yesterday', '3 weeks ago'; both times are ms since 1970. */
export function saysAgo(at: number, now: number): string {
  const past = Math.max(0, now - at);
  const ago = new Intl.RelativeTimeFormat(localeOf(speech.value), { numeric: 'auto' });
  if (past < MINUTE) return say('ui.justNow');
  if (past < HOUR) return ago.format(-Math.floor(past / MINUTE), 'minute');
  const days = daysBetween(at, now);
  if (days === 0) return ago.format(-Math.floor(past / HOUR), 'hour');
  if (days < 14) return ago.format(-days, 'day');
  if (days < 60) return ago.format(-Math.floor(days / 7), 'week');
  if (days < 365) return ago.format(-Math.floor(days / 30.44), 'month');
  return ago.format(-Math.floor(days / 365.25) || -1, 'year');
}

/** Midnights between the two, by her own calendar: what was knitted last evening was 'yesterday'. */
const daysBetween = (at: number, now: number): number => Math.round((midnight(now) - midnight(at)) / DAY);

const midnight = (at: number): number => new Date(at).setHours(0, 0, 0, 0);

/** '25 November 2026' */
export const saysDate = (at: number): string =>
  new Intl.DateTimeFormat(localeOf(speech.value), { dateStyle: 'long' }).format(at);

/** '25 Nov, 21:40' */
export const saysMoment = (at: number): string =>
  new Intl.DateTimeFormat(localeOf(speech.value), {
    day: 'numeric',
    month: 'short',
    hour: 'numeric',
    minute: '2-digit',
  }).format(at);

/** '1 h 20 min', '45 min', for a sitting; at least one minute. */
export function saysDuration(ms: number): string {
  const minutes = Math.max(1, Math.round(ms / MINUTE));
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  const unit = (count: number, name: 'hour' | 'minute') =>
    new Intl.NumberFormat(localeOf(speech.value), { style: 'unit', unit: name, unitDisplay: 'short' }).format(
      count,
    );
  if (hours === 0) return unit(minutes, 'minute');
  return rest === 0 ? unit(hours, 'hour') : `${unit(hours, 'hour')} ${unit(rest, 'minute')}`;
}
