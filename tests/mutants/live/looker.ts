/** What is going on, said to the thread that looks after it: more than `ms` of the processor, and it is ended. */
export interface Now {
  readonly id: number;
  readonly what: string;
  readonly ms: number;
}

export const channel = 'ridgeline-mutants';
