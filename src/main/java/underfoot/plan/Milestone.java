package underfoot.plan;

import java.time.LocalDateTime;
import java.util.Optional;

/**
 * A day the client waits for.
 *
 * @param what what has come, such as that light use begins
 * @param step the id of the step it hangs on
 * @param hour hours from the start of the work
 * @param on its date and time; empty without a start date
 */
public record Milestone(String what, String step, double hour, Optional<LocalDateTime> on) {}
