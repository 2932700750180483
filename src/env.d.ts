/// <reference types="astro/client" />

declare namespace App {
  /** What the page hands to the authors' cells. */
  interface Locals {
    lesson: import("./lesson/lesson-context.ts").LessonContext;
  }
}
