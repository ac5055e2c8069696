package org.evenhand.command.preview;

import com.sun.net.httpserver.HttpExchange;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Browsers that wait for a newer edition. A waiting one holds its connection and no thread; it is answered when there is a
 * newer edition, when its time is over, or when too many wait.
 */
final class Waiting {

    private static final int MOST = 64;

    private final long patienceNs;
    private final Deque<Parked> parked = new ArrayDeque<>();
    private String newest;

    private record Parked(HttpExchange exchange, long sinceNs) {}

    /**
     * Nobody waits yet.
     *
     * @param newest id of the edition that there is
     * @param patienceMs after which one that waits is told that there is nothing yet
     */
    Waiting(String newest, long patienceMs) {
        this.newest = newest;
        this.patienceNs = patienceMs * 1_000_000;
    }

    /** Lets one wait, unless the edition that it knows is not the newest. */
    void park(HttpExchange exchange, String known) {
        String answer;
        List<Parked> dismissed = new ArrayList<>();
        synchronized (this) {
            answer = newest;
            if (known.equals(newest)) {
                parked.addLast(new Parked(exchange, System.nanoTime()));
                if (parked.size() > MOST) {
                    dismissed.add(parked.removeFirst());
                }
            }
        }
        if (!known.equals(answer)) {
            Reply.text(exchange, 200, answer);
        }
        dismissed.forEach(Waiting::nothingYet);
    }

    /** Tells all who wait of a newer edition. */
    void announce(String id) {
        List<Parked> told;
        synchronized (this) {
            newest = id;
            told = List.copyOf(parked);
            parked.clear();
        }
        told.forEach(p -> Reply.text(p.exchange(), 200, id));
    }

    /** Lets those go who have waited long; so nobody is kept who is not there any more. */
    void sweep() {
        List<Parked> tired = new ArrayList<>();
        synchronized (this) {
            while (!parked.isEmpty() && System.nanoTime() - parked.getFirst().sinceNs() >= patienceNs) {
                tired.add(parked.removeFirst());
            }
        }
        tired.forEach(Waiting::nothingYet);
    }

    /** How many wait. */
    synchronized int count() {
        return parked.size();
    }

    private static void nothingYet(Parked waiting) {
        Reply.nothing(waiting.exchange(), 204);
    }
}
