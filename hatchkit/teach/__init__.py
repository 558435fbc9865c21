"""The course and what a class needs: exercises and their checker, cases with a hidden cause, answer forms, marks."""
