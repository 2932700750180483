// Lessons stand outside src, a folder each: prose in lesson.mdx, start values in problem.json.
import { defineCollection } from "astro:content";
import { glob } from "astro/loaders";
import { z } from "astro/zod";

const lessons = defineCollection({
  loader: glob({
    base: "./lessons",
    pattern: "*/lesson.mdx",
    generateId: ({ entry }) => entry.replace(/\/lesson\.mdx$/, ""),
  }),
  schema: z.strictObject({
    title: z.string().min(1),
    /** One sentence for lists and for the head of the page. */
    summary: z.string().min(1),
    /** A question to settle before each handle is moved, by rope id, "place", "load", "ax" or "ay". */
    questions: z.record(z.string(), z.string()).default({}),
    /** Whether something hangs or is hauled, so that the caution stands on the page. */
    hangs: z.boolean(),
  }),
});

export const collections = { lessons };
