import { signal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';

/**
 * A component that is loaded once what is needed first has been painted; nothing stands in its place until then.
 * Where its file cannot be had (a first visit cut off) it is tried again when it is next drawn anew.
 */
export function later<Props extends object>(load: () => Promise<ComponentType<Props>>): ComponentType<Props> {
  const loaded = signal<ComponentType<Props> | undefined>(undefined);
  const fetch = () =>
    load().then(
      (component) => {
        loaded.value = component;
      },
      () => undefined,
    );
  return function Later(props: Props) {
    useEffect(() => {
      if (loaded.value !== undefined) return;
      const frame = requestAnimationFrame(() => setTimeout(() => void fetch()));
      return () => cancelAnimationFrame(frame);
    }, []);
    const Loaded = loaded.value;
    return Loaded === undefined ? null : <Loaded {...props} />;
  };
}
