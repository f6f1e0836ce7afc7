/** An object without the keys whose value is undefined. */
export type Given<T> = { [K in keyof T as undefined extends T[K] ? never : K]: T[K] } & {
  [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
};

/** Leaves out every key whose value is undefined, so that an optional key is either there or not. */
export const given = <T extends object>(object: T): Given<T> =>
  Object.fromEntries(Object.entries(object).filter(([, value]) => value !== undefined)) as Given<T>;
