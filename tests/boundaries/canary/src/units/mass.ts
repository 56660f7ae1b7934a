export type Mass = number;
