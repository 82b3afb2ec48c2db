import {
  attempt,
  type Cursor,
  isWord,
  sees,
  takeAnyPhrase,
  takeNumber,
  takes,
  takesOne,
  took,
} from '../../row/read/cursor.ts';
import type { AsFarAs, Place } from './how-far.ts';
import { readReversing } from './other-side.ts';
import { readPieceName, readPlace } from './phrase/place.ts';
import { readUntil } from './phrase/until.ts';
import type { Statement } from './statement.ts';

/** 'work as for back to armhole', 'shape armhole as for back', 'same as left front, reversing all shaping'. */
export const readAsFor = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const only = readOnly(c);
    const starred = takeFromStars(c);
    const named =
      takesOne(c, 'made as another') &&
      attempt(c, () => {
        takes(c, 'the');
        return readPieceName(c) !== undefined && sees(c, 'as', 'same', 'exactly', 'like', 'the', 'to', 'in');
      });
    const between = starred || takeFromStars(c);
    // 'work to armhole as for back'
    const early = attempt(c, () => {
      const place = named ? undefined : readToPlace(c);
      return place !== undefined && sees(c, 'as', 'same', 'like') ? place : undefined;
    });
    takes(c, 'on', 'the', 'and');
    const shaped = only ?? readOnly(c);
    takes(c, 'it', 'exactly', 'piece', 'this', 'to');
    takes(c, 'and', 'correspond', 'match');
    takes(c, 'work');
    const as =
      takeAnyPhrase(
        c,
        'same number of sts and work as',
        'as given|directed|described|instructed',
        'the? same as',
        'in? the? same manner|way as',
        'directions|instructions',
        'as on|in',
        'as',
        'like',
        'to match|correspond to|with',
        'to match',
      ) ||
      (took(c, 'correspond', 'match') && (takes(c, 'with', 'to') || took(c, 'match')));
    takes(c, 'for', 'of', ...(took(c, 'as') ? ['on', 'in'] : []));
    takes(c, 'the');
    const piece = as ? readPieceName(c) : undefined;
    if (piece === undefined) return undefined;
    // 'shape armhole same as back armhole'
    if (shaped !== undefined) attempt(c, () => readPlace(c) === shaped);
    takes(c, ',');
    const reversing = readReversing(c);
    const stars = between || takeFromStars(c);
    const three = stars && c.tokens[c.at - 3]?.text === '*';
    const to: AsFarAs | undefined = stars
      ? { is: 'place', place: three ? 'three stars' : 'stars' }
      : (early ?? readAsFarAs(c));
    const reversing2 = readReversing(c) || reversing;
    return {
      is: 'as for',
      piece,
      reversing: reversing2,
      ...(to === undefined ? {} : { to }),
      ...(shaped === undefined ? {} : { only: shaped }),
    };
  });

/** 'from ** to **', 'to **'. */
const takeFromStars = (c: Cursor): boolean =>
  takeAnyPhrase(
    c,
    'from * * *? to|until * * *?',
    'from beg|start to * * *?',
    'up? to|until * * *?',
    'as far as * * *?',
  );

/** 'shape armhole(s)', 'armhole shaping', 'shoulder': only that stretch of the other piece is worked. */
const readOnly = (c: Cursor): Place | undefined =>
  attempt(c, () => {
    const shape =
      takes(c, 'shape', 'shaping') ||
      takeAnyPhrase(c, 'bind|cast off and? dec? for', 'dec for', 'bind|cast off');
    takes(c, 'the');
    const place = readPlace(c);
    if (place !== undefined && (shape || sees(c, 'as', 'same', 'in', 'to') || took(c, 'shaping', 'shapings')))
      return place;
  });

/** 'until 15 rows have been worked after armhole shaping': counted from its last row. */
const readRowsPast = (c: Cursor): AsFarAs | undefined =>
  attempt(c, () => {
    const n = takes(c, 'until', 'to') ? takeNumber(c) : undefined;
    if (n === undefined || !Number.isSafeInteger(n) || !takes(c, 'rows')) return undefined;
    takeAnyPhrase(c, 'have been worked|completed', 'are worked|completed');
    if (!takes(c, 'after', 'past', 'beyond')) return undefined;
    const from = readPlace(c);
    return from !== undefined && took(c, 'shaping', 'shapings')
      ? { is: 'rows after', rows: n, from, past: true }
      : undefined;
  });

/** 'until 4 rows before shoulder shaping'. */
const readRowsBefore = (c: Cursor): AsFarAs | undefined =>
  attempt(c, () => {
    const rows = takes(c, 'until', 'to') ? takeNumber(c) : undefined;
    if (rows === undefined || !Number.isSafeInteger(rows) || !takes(c, 'rows')) return undefined;
    if (!takes(c, 'before', 'below')) return undefined;
    const place = readPlace(c);
    return place && { is: 'rows before', rows, place };
  });

const readAsFarAs = (c: Cursor): AsFarAs | undefined =>
  attempt(c, () => {
    const from = c.at;
    const past = readRowsPast(c) ?? readRowsBefore(c);
    if (past) return past;
    const place = readToPlace(c);
    if (place !== undefined) return place;
    const until = readUntil(c);
    if (until?.is === 'same length' && until.lessRows !== undefined) {
      const before = until.to === undefined ? {} : { place: until.to };
      return { is: 'rows before', rows: until.lessRows, ...before };
    }
    if (until?.is === 'same length' && until.lessMm !== undefined)
      return { is: 'less', mm: until.lessMm, ...(until.to === undefined ? {} : { place: until.to }) };
    if (until?.is === 'count') return until;
    if (until?.is === 'rows in all' && !c.tokens.slice(from, c.at).some((one) => isWord(one, 'after')))
      return { is: 'rows after', rows: until.n, from: until.from };
    if (until?.is === 'length') return { is: 'length', mm: until.mm, from: until.from };
  });

/** 'to armhole', 'up to where neck shaping begins', 'until armhole is bound off'; 'until armhole measures 10 cm' is a length. */
const readToPlace = (c: Cursor): AsFarAs | undefined =>
  attempt(c, () => {
    takes(c, ',');
    const from = c.at;
    if (!takes(c, 'to', 'until', 'up', 'as')) return undefined;
    takes(c, 'to', 'far', 'end');
    takes(c, 'as', 'of');
    takes(c, 'the', 'where', 'beg', 'start');
    if (takes(c, 'completion')) takes(c, 'of');
    const place = readPlace(c);
    if (place === undefined) return undefined;
    // 'to end of armhole shaping'
    const behind = c.tokens.slice(from, c.at).some((one) => isWord(one, 'end', 'completion'));
    if (behind && place !== 'rib' && took(c, 'shaping', 'shapings'))
      return { is: 'rows after', rows: 0, from: place, past: true };
    if (
      takeAnyPhrase(
        c,
        'is|are|has|have been? bound|cast off',
        'is|are|has|have been? completed|complete|worked|done',
      )
    )
      return place === 'rib'
        ? { is: 'place', place }
        : { is: 'rows after', rows: 0, from: place, past: true };
    const begun = takeAnyPhrase(c, 'is|are reached', 'begins');
    return begun || !sees(c, 'measure', 'measures', 'is', 'are') ? { is: 'place', place } : undefined;
  });
