package underfoot.knowledge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The facts held of one floor, by name and by what they are about. Of two, the later holds. */
public final class Facts {
  private final Map<Key, Fact> byName = new LinkedHashMap<>();
  private final Facts beneath;
  private final Lookups noted;
  private volatile Map<String, List<String>> aboutsByName;

  /** Begins with none. */
  public Facts() {
    this(null, null);
  }

  private Facts(Facts beneath, Lookups noted) {
    this.beneath = beneath;
    this.noted = noted;
  }

  /** Begins with those of others, which stay as they are whatever is added here. */
  public static Facts over(Facts beneath) {
    return new Facts(beneath, null);
  }

  /** The same, and what is looked up beneath is noted. */
  public static Facts noting(Facts beneath, Lookups noted) {
    return new Facts(beneath, noted);
  }

  /** What a fact goes by. Facts are looked up so often that a joined text would cost most of it. */
  record Key(String name, String about) {
    @Override
    public int hashCode() {
      return 31 * name.hashCode() + about.hashCode();
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Key that && name.equals(that.name) && about.equals(that.about);
    }
  }

  /** Adds facts. */
  public Facts addAll(Iterable<?> objects) {
    for (Object object : objects) {
      if (object instanceof Fact fact) {
        add(fact);
      }
    }
    return this;
  }

  /** Adds one fact. */
  public void add(Fact fact) {
    byName.put(new Key(fact.name(), fact.about()), fact);
    if (aboutsByName != null) {
      aboutsByName = null;
    }
  }

  /** The fact of that name about the room, or null. */
  public Fact find(String name) {
    return find(name, "");
  }

  /** The fact of that name about one thing, or null. */
  public Fact find(String name, String about) {
    return find(new Key(name, about));
  }

  Fact find(Key key) {
    Fact own = byName.get(key);
    if (own != null || beneath == null) {
      return own;
    }
    Fact found = beneath.find(key);
    if (noted != null) {
      noted.note(key, found);
    }
    return found;
  }

  /** The fact about that thing, or failing that about the room, or null. */
  public Fact findNear(String name, String about) {
    Fact near = find(name, about);
    return near == null ? find(name) : near;
  }

  /** The number of a fact about the room; NaN if there is none. */
  public double number(String name) {
    return number(name, "");
  }

  /** The number of a fact about one thing; NaN if there is none. */
  public double number(String name, String about) {
    Fact fact = find(name, about);
    return fact == null ? Double.NaN : fact.number();
  }

  /** The text of a fact about the room; empty if there is none. */
  public String text(String name) {
    Fact fact = find(name);
    return fact == null ? "" : fact.text();
  }

  /** What the facts of a name are about, in order. */
  public List<String> abouts(String name) {
    List<String> own = ownAbouts().getOrDefault(name, List.of());
    if (beneath == null) {
      return new ArrayList<>(own);
    }
    List<String> under = beneath.abouts(name);
    if (noted != null) {
      noted.noteAbouts(name, under);
    }
    Set<String> abouts = new LinkedHashSet<>(under);
    abouts.addAll(own);
    return new ArrayList<>(abouts);
  }

  /** What the facts added here are about, by name; gathered when first asked for. */
  private Map<String, List<String>> ownAbouts() {
    Map<String, List<String>> gathered = aboutsByName;
    if (gathered == null) {
      gathered = new HashMap<>();
      for (Key key : byName.keySet()) {
        gathered.computeIfAbsent(key.name(), name -> new ArrayList<>(1)).add(key.about());
      }
      aboutsByName = gathered;
    }
    return gathered;
  }

  /** All facts in the order they were added. */
  public Collection<Fact> all() {
    if (beneath == null) {
      return byName.values();
    }
    Map<Key, Fact> all = new LinkedHashMap<>();
    gather(all);
    return all.values();
  }

  private void gather(Map<Key, Fact> all) {
    if (noted != null) {
      noted.noteEverything();
    }
    if (beneath != null) {
      beneath.gather(all);
    }
    all.putAll(byName);
  }
}
