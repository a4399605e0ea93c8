package org.firnline.app.store;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import javax.sql.DataSource;
import org.firnline.app.store.database.Databases;
import org.firnline.app.store.database.StoreAddress;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The laboratory that is served: its folder, its clock and its database. */
@Configuration(proxyBeanMethods = false)
class StoreBeans {
  @Bean
  DataFolder dataFolder(@Value("${firnline.data}") Path root) {
    return new DataFolder(root);
  }

  /** The zone in which this laboratory reads its clocks: that of this machine. */
  @Bean
  ZoneId zone() {
    return ZoneId.systemDefault();
  }

  @Bean
  Clock clock(ZoneId zone) {
    return Clock.system(zone);
  }

  @Bean
  StoreAddress storeAddress(DataFolder folder, @Value("${firnline.store:}") String setting) {
    return StoreAddress.of(setting, folder.database());
  }

  @Bean(destroyMethod = "close")
  DataSource dataSource(StoreAddress address) {
    return Databases.open(address);
  }
}
